using System.Text.Json;
using EpisodePlanner.Web.Features.Plans;
using EpisodePlanner.Web.Features.Why;

namespace EpisodePlanner.Web.Features.Story;

/// <summary>
/// Where the stories could be cut otherwise; everything was tried by planning again. Moments are local ISO date-times with
/// their offset, days ISO dates, hours decimal.
/// </summary>
public sealed record CutsDocument : IComputedDocument
{
    /// <summary>The format of this document.</summary>
    public int Format { get; init; } = 1;

    /// <summary>The moment of planning.</summary>
    public required string PlannedAt { get; init; }

    /// <summary>The cuts of all series that together weigh least where nothing is held back, or null.</summary>
    public required ProposalEntry? Cuts { get; init; }

    /// <summary>Cuts and slots together, where holding episodes back weighs less, or null.</summary>
    public required ProposalEntry? Held { get; init; }

    /// <summary>What the plan weighs now.</summary>
    public required StoryWeightsEntry Now { get; init; }

    /// <summary>What it weighs once the better proposal is taken.</summary>
    public required StoryWeightsEntry Then { get; init; }

    /// <summary>How many plans were made.</summary>
    public required int PlansMade { get; init; }

    /// <summary>Whether every way to cut that is open was planned.</summary>
    public required bool EveryWay { get; init; }

    /// <summary>What no cut and no slot can do.</summary>
    public required IReadOnlyList<FindingEntry> Notes { get; init; }

    /// <summary>The series that were asked about.</summary>
    public required IReadOnlyList<SeriesCutsEntry> Series { get; init; }
}

/// <summary>Where one series could be cut; everything was tried by planning again.</summary>
public sealed record SeriesCutsDocument : IComputedDocument
{
    /// <summary>The format of this document.</summary>
    public int Format { get; init; } = 1;

    /// <summary>The moment of planning.</summary>
    public required string PlannedAt { get; init; }

    /// <summary>The series.</summary>
    public required SeriesCutsEntry Cuts { get; init; }
}

/// <summary>What a story is judged by, in this order; less is better.</summary>
/// <param name="Unpublished">Episodes without a slot.</param>
/// <param name="LateMinutes">Minutes by which told dates, needed-by dates and pinned slots are missed.</param>
/// <param name="Silence">Sum of squares of days of silence beyond promises, a line after 30 days.</param>
/// <param name="Moves">Stages that leave the accepted start of the next seven days.</param>
/// <param name="EndMinute">The end of the work, minutes from planning.</param>
public sealed record StoryWeightsEntry(int Unpublished, long LateMinutes, long Silence, long Moves, long EndMinute);

/// <summary>One series: its places, other episodes, and the last slot within its promise.</summary>
/// <param name="Series">The series.</param>
/// <param name="LastSlot">The last slot within its promise, or null.</param>
/// <param name="Places">Its milestones still to be told, in story order.</param>
/// <param name="Others">Episodes that need no more of the build.</param>
public sealed record SeriesCutsEntry(
    string Series, LastSlotEntry? LastSlot, IReadOnlyList<CutPlaceEntry> Places, IReadOnlyList<ProposalEntry> Others);

/// <summary>The last slot within a promise.</summary>
/// <param name="DueBy">The last day within the promise.</param>
/// <param name="Slot">The slot, or null for none.</param>
/// <param name="OpenMinutes">Minutes with somebody present until an episode must be ready for it.</param>
/// <param name="TailMinutes">Minutes of an episode's tail.</param>
/// <param name="MinutesToFind">Minutes that are missing.</param>
public sealed record LastSlotEntry(string DueBy, SlotEntry? Slot, int OpenMinutes, int TailMinutes, int MinutesToFind);

/// <summary>A milestone still to be told.</summary>
/// <param name="Milestone">The milestone.</param>
/// <param name="Episode">The episode that shows it.</param>
/// <param name="IsCut">Whether that episode ends with it.</param>
/// <param name="Stays">Why nothing is proposed here, or null.</param>
/// <param name="Proposal">The cut set or taken away, or null.</param>
/// <param name="Moved">The nearest cut moved here, or null.</param>
public sealed record CutPlaceEntry(
    string Milestone, string Episode, bool IsCut, string? Stays, ProposalEntry? Proposal, ProposalEntry? Moved);

/// <summary>A change to the story.</summary>
/// <param name="Move">together, togetherHeld, cutHere, join, moveCut, fromFootage or tellFailure.</param>
/// <param name="Says">It in words.</param>
/// <param name="Change">The change, as it can be made.</param>
/// <param name="DaysOver">Days of silence beyond promises, added up: of its series, or of all.</param>
/// <param name="WorstOver">The same of the one silence that is furthest beyond its promise.</param>
/// <param name="HoursMore">Hours of work more; negative for less.</param>
/// <param name="Moved">Uploads on another day.</param>
/// <param name="Added">Episodes that come.</param>
/// <param name="Gone">Episodes that go.</param>
/// <param name="Outlooks">The series that differ, the channel last.</param>
public sealed record ProposalEntry(
    string Move,
    string Says,
    JsonElement Change,
    BeforeAndThen DaysOver,
    BeforeAndThen WorstOver,
    decimal HoursMore,
    IReadOnlyList<DayMoveEntry> Moved,
    IReadOnlyList<ProposedEpisodeEntry> Added,
    IReadOnlyList<string> Gone,
    IReadOnlyList<OutlookChangeEntry> Outlooks);

/// <summary>A number now and after a change.</summary>
/// <param name="Before">Now.</param>
/// <param name="Then">After it.</param>
public sealed record BeforeAndThen(int Before, int Then);

/// <summary>An episode that comes with a proposal.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Title">Its working title.</param>
/// <param name="Series">Its series.</param>
/// <param name="Milestones">The milestones it shows.</param>
/// <param name="Publish">The day it goes out, or null.</param>
public sealed record ProposedEpisodeEntry(string Id, string Title, string Series, IReadOnlyList<string> Milestones, string? Publish);

/// <summary>The silences of a series before and after.</summary>
/// <param name="Series">The series; null for the channel.</param>
/// <param name="Before">The silences to come now.</param>
/// <param name="Then">The silences to come then.</param>
/// <param name="LastUploadLater">Days by which its last upload is later; negative for earlier; null where one has none.</param>
public sealed record OutlookChangeEntry(
    string? Series, IReadOnlyList<SilenceSpan> Before, IReadOnlyList<SilenceSpan> Then, int? LastUploadLater);
