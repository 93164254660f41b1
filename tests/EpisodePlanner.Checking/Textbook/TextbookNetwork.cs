using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Checking.Textbook;

/// <summary>A network from outside the project, as plain data, with the values it must give.</summary>
/// <param name="Name">A short name.</param>
/// <param name="Source">Where it comes from, and how well that is known.</param>
/// <param name="Unit">What one unit of duration and lag means in the source.</param>
/// <param name="Activities">The activities.</param>
/// <param name="Links">The links, by activity name.</param>
/// <param name="Dates">What is known of each activity's dates and floats.</param>
/// <param name="End">The end of the project.</param>
/// <param name="Critical">The one critical path, by activity name, in order.</param>
public sealed record TextbookNetwork(
    string Name,
    string Source,
    string Unit,
    IReadOnlyList<TextbookActivity> Activities,
    IReadOnlyList<TextbookLink> Links,
    IReadOnlyList<TextbookDates> Dates,
    long End,
    IReadOnlyList<string> Critical);

/// <summary>An activity and how long it takes, in the network's unit.</summary>
public sealed record TextbookActivity(string Name, long Duration);

/// <summary>A link between two activities, by name; the lag in the network's unit.</summary>
public sealed record TextbookLink(string From, string To, LinkKind Kind = LinkKind.After, long Lag = 0);

/// <summary>The dates and floats known of an activity; null where the source says nothing.</summary>
public sealed record TextbookDates(
    string Activity,
    long? EarlyStart = null,
    long? EarlyFinish = null,
    long? LateStart = null,
    long? LateFinish = null,
    long? TotalFloat = null,
    long? FreeFloat = null);
