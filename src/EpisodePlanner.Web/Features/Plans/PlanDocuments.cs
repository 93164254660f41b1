using EpisodePlanner.Planning;

namespace EpisodePlanner.Web.Features.Plans;

/// <summary>Makes the document of a plan.</summary>
internal sealed class PlanDocuments(Plan plan)
{
    private readonly DocumentValues values = new(plan.Zone);

    public PlanDocument Of(PlanAdvice advice)
    {
        var (work, story) = (new WorkDocuments(plan, values), new StoryDocuments(values));
        var more = new AdviceDocuments(plan, values, work);
        return new PlanDocument
        {
            Workshop = plan.Request.Workshop.Name,
            Zone = plan.Request.Workshop.Zone,
            PlannedAt = values.Moment(plan.Request.PlannedAt),
            Horizon = values.Moment(plan.Horizon),
            DemoMovedWeeks = advice.MovedWeeks,
            NextUpload = plan.NextUpload is { } next
                ? new UploadEntry($"{next.Id}", next.Title, $"{next.Series}", values.Moment(next.Publish!.Value))
                : null,
            Tasks = work.Tasks(),
            Episodes = [.. plan.Episodes.Select(episode => story.Episode(episode, work.Tail(episode.Id)))],
            Series = [.. plan.Series.Select(outlook => story.Silences(outlook, advice))],
            Channel = story.Silences(plan.Channel, advice),
            NextThing = more.Next(advice.Next),
            Tonight = [.. advice.Tonight.Select(more.Tonight)],
            FilmFirst = [.. advice.FilmFirst.Select(more.Shot)],
            Outside = OutsideDocuments.Of(advice.Outside),
            Moved = [.. advice.Moved.Select(more.Moved)],
            Findings = [.. plan.Findings.Select(f => new FindingEntry(DocumentValues.Word(f.Kind), f.Where, f.Says))],
            Assumed = [.. advice.Assumed.Select(a => new AssumedEntry(a.Name, a.Where, a.Says, a.Ask, a.Tried, a.MovesMinutes))],
            Search = Search(),
        };
    }

    private SearchEntry Search() => new(
        plan.Rule, plan.Generated, plan.Weights.LateMinutes, plan.Weights.Silence, plan.Weights.Moves, plan.Weights.EndMinute);
}
