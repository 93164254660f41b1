using System.Text.Json;
using EpisodePlanner.Planning;
using EpisodePlanner.Planning.Files;
using EpisodePlanner.Web.Features.Plans;
using EpisodePlanner.Web.Features.Why;

namespace EpisodePlanner.Web.Features.Story;

/// <summary>Makes documents of cuts.</summary>
internal sealed class CutsDocuments(Plan plan)
{
    private readonly DocumentValues values = new(plan.Zone);

    /// <summary>The document of all series together, and of those that were asked about.</summary>
    public CutsDocument Of(StoryAnswer answer, IEnumerable<SeriesStory> stories) => new()
    {
        PlannedAt = values.Moment(plan.Request.PlannedAt),
        Cuts = answer.Cuts is { } cuts ? Of(cuts) : null,
        Held = answer.Held is { } held ? Of(held) : null,
        Now = Of(answer.Now),
        Then = Of(answer.Then),
        PlansMade = answer.Made,
        EveryWay = answer.IsWhole,
        Notes = [.. answer.Notes.Select(note => new FindingEntry(DocumentValues.Word(note.Kind), note.Where, note.Says))],
        Series = [.. stories.Select(Of)],
    };

    /// <summary>The document of one series.</summary>
    public SeriesCutsDocument Document(SeriesStory story) => new()
    {
        PlannedAt = values.Moment(plan.Request.PlannedAt),
        Cuts = Of(story),
    };

    private static SeriesCutsEntry Of(SeriesStory story) => new(
        $"{story.Series.Id}",
        story.LastSlot is { } last ? Of(last) : null,
        [.. story.Places.Select(Of)],
        [.. story.Others.Select(Of)]);

    private static LastSlotEntry Of(LastSlot last) => new(
        DocumentValues.Day(last.DueBy),
        last.Slot is { } slot ? new SlotEntry($"{slot.Rule}", DocumentValues.Local(slot.LocalOpening)) : null,
        last.OpenMinutes,
        last.TailMinutes,
        last.MinutesToFind);

    private static CutPlaceEntry Of(CutPlace place) => new(
        $"{place.Milestone.Id}",
        $"{place.Episode.Id}",
        place.IsCut,
        place.Stays,
        place.Proposal is { } proposal ? Of(proposal) : null,
        place.Moved is { } moved ? Of(moved) : null);

    private static ProposalEntry Of(StoryProposal proposal) => new(
        DocumentValues.Word(proposal.Move),
        proposal.Says,
        JsonElement.Parse(ChangeFile.Write(proposal.Change)),
        new BeforeAndThen(proposal.DaysOver.Before, proposal.DaysOver.Then),
        new BeforeAndThen(proposal.WorstOver.Before, proposal.WorstOver.Then),
        decimal.Round(proposal.Difference.HoursMore, 2),
        [.. proposal.Difference.Moved.Select(move => new DayMoveEntry($"{move.Episode}", DocumentValues.Day(move.From), DocumentValues.Day(move.To)))],
        [.. proposal.Difference.Added.Select(Of)],
        [.. proposal.Difference.Gone.Select(episode => $"{episode.Id}")],
        [.. proposal.Difference.Outlooks.Select(Of)]);

    private static ProposedEpisodeEntry Of(PlannedEpisode episode) => new(
        $"{episode.Id}",
        episode.Title,
        $"{episode.Series}",
        [.. episode.Milestones.Select(milestone => $"{milestone}")],
        DocumentValues.Day(episode.Date));

    private static OutlookChangeEntry Of(OutlookChange change) => new(
        DocumentValues.Name(change.Before.Series), Spans(change.Before), Spans(change.Then), change.FinaleLater);

    private static IReadOnlyList<SilenceSpan> Spans(Outlook outlook) =>
        [.. outlook.Forecast.Select(s => new SilenceSpan(DocumentValues.Day(s.From), DocumentValues.Day(s.To), s.Days))];

    private static StoryWeightsEntry Of(StoryWeights weights) =>
        new(weights.Unpublished, weights.LateMinutes, weights.Silence, weights.Moves, weights.EndMinute);
}
