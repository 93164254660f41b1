using System.Text.Json;
using EpisodePlanner.Planning;
using EpisodePlanner.Planning.Files;
using EpisodePlanner.Web.Features.Plans;

namespace EpisodePlanner.Web.Features.Why;

/// <summary>Makes documents that tell why.</summary>
internal sealed class WhyDocuments(Plan plan)
{
    private readonly DocumentValues values = new(plan.Zone);

    /// <summary>The document of an episode.</summary>
    public WhyDocument Of(EpisodeWhy why) => new()
    {
        PlannedAt = values.Moment(plan.Request.PlannedAt),
        Episode = $"{why.Episode.Id}",
        Title = why.Episode.Title,
        Ready = values.Moment(why.Episode.Ready),
        Publish = values.Moment(why.Episode.Publish),
        Chain = new StoryDocuments(values).Chain(why.Episode),
        WhatIfs = [.. why.WhatIfs.Select(Of)],
        DayLater = [.. why.DayLater.Select(Of)],
        Contests = [.. why.Contests.Select(Of)],
    };

    private WhatIfEntry Of(WhatIf tried) => new(
        DocumentValues.Word(tried.Idea.Kind),
        tried.Idea.Says,
        JsonElement.Parse(ChangeFile.Write(tried.Idea.Change)),
        DocumentValues.Day(tried.Date),
        tried.DaysWon,
        values.Moment(tried.Ready),
        tried.MinutesWon,
        [.. tried.Others.Select(Of)],
        [.. tried.Idea.Cautions.Select(c => new CautionEntry(c.Topic, c.Text, c.Source, c.Defers))]);

    private DayLaterEntry Of(DayLater task) =>
        new($"{task.Task}", values.Moment(task.Starts), task.CanWait, [.. task.Later.Select(Of)]);

    private static DayMoveEntry Of(UploadMove move) =>
        new($"{move.Episode}", DocumentValues.Day(move.From), DocumentValues.Day(move.To));

    private static ContestEntry Of(Contest contest) => new(
        $"{contest.Station}", contest.Minutes, [.. contest.Rivalries.Select(rivalry => new RivalryEntry(
            DocumentValues.Name(rivalry.Winner),
            DocumentValues.Name(rivalry.Loser),
            rivalry.Times,
            rivalry.Minutes,
            DocumentValues.Key(rivalry.Before.Key),
            DocumentValues.Key(rivalry.First.Key)))]);
}
