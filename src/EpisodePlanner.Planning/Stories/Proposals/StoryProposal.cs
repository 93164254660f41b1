namespace EpisodePlanner.Planning;

/// <summary>What sort of change to the story is proposed.</summary>
public enum StoryMove
{
    /// <summary>Cuts of all series together; whatever is ready goes out in the first free slot.</summary>
    Together,

    /// <summary>Cuts and slots of all series together: some episodes are held back.</summary>
    TogetherHeld,

    /// <summary>An episode ends with a milestone where none did.</summary>
    CutHere,

    /// <summary>An episode no longer ends with a milestone.</summary>
    Join,

    /// <summary>An episode ends with a milestone instead of with another near it.</summary>
    MoveCut,

    /// <summary>An episode from footage that exists: a tail and no build.</summary>
    FromFootage,

    /// <summary>A failure that was filmed becomes an episode.</summary>
    TellFailure,
}

/// <summary>A change to the story with what it costs beside what it wins, both found by planning again.</summary>
public sealed record StoryProposal
{
    /// <summary>What sort of change.</summary>
    public required StoryMove Move { get; init; }

    /// <summary>In words: "an episode ends with \u201cwheels on\u201d".</summary>
    public required string Says { get; init; }

    /// <summary>The series it is about; null for all together.</summary>
    public required Id? Series { get; init; }

    /// <summary>What tells it from others of its sort and series: the milestone or the log entry it is about; null for none.</summary>
    public Id? About { get; init; }

    /// <summary>The change to the workshop; taking the proposal is applying it.</summary>
    public required Change Change { get; init; }

    /// <summary>The plan before.</summary>
    public required Plan Before { get; init; }

    /// <summary>The plan after the change, made from nothing but the changed workshop.</summary>
    public required Plan Then { get; init; }

    /// <summary>What differs.</summary>
    public PlanDifference Difference => new(Before, Then);

    /// <summary>
    /// Days of silence beyond promises that uploads end, added up, before and after: of its series, or of all where it is about
    /// all.
    /// </summary>
    public (int Before, int Then) DaysOver => (Over(Before).Sum(), Over(Then).Sum());

    /// <summary>The same of the one silence that is furthest beyond its promise; 0 where every promise holds.</summary>
    public (int Before, int Then) WorstOver => (Over(Before).DefaultIfEmpty(0).Max(), Over(Then).DefaultIfEmpty(0).Max());

    /// <summary>Plans a change.</summary>
    /// <returns>The proposal; null where the change is refused.</returns>
    internal static StoryProposal? Of(
        Plan before, StoryMove move, string says, (Id Series, Id? About) of, Change change, CancellationToken stop = default) =>
        Replanning.After(before, change, stop) is { } then
            ? new StoryProposal
            {
                Move = move,
                Says = says,
                Series = of.Series,
                About = of.About,
                Change = change,
                Before = before,
                Then = then,
            }
            : null;

    /// <summary>Silences that an upload ends; after the last upload nothing is planned either way.</summary>
    private IEnumerable<int> Over(Plan plan) => plan.Series
        .Where(outlook => Series is null || outlook.Series == Series)
        .SelectMany(outlook => outlook.Alarms)
        .Where(alarm => alarm.Ends is not null)
        .Select(alarm => alarm.DaysOver);
}
