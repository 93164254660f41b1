using System.ComponentModel.DataAnnotations;
using NodaTime;

namespace EpisodePlanner.Planning;

/// <summary>What a series is doing.</summary>
public enum SeriesState
{
    /// <summary>Told now; its silence counts.</summary>
    Active,

    /// <summary>Openly paused until a date; no alarms before it.</summary>
    Resting,

    /// <summary>Told to its end; no more silence.</summary>
    Finished,
}

/// <summary>The longest silence a series allows itself: days, or uploads in a calendar month; exactly one is given.</summary>
public sealed record Promise
{
    /// <summary>The longest silence, in days between two uploads.</summary>
    [Range(1, 730)]
    public int? LongestSilenceDays { get; init; }

    /// <summary>Uploads in each calendar month.</summary>
    [Range(1, 31)]
    public int? UploadsPerMonth { get; init; }
}

/// <summary>Three values of one quantity: the least, the likely, the most; in this order.</summary>
public sealed record ThreePoint
{
    /// <summary>Hardly ever less.</summary>
    [Range(0, 10_000)]
    public required decimal Low { get; init; }

    /// <summary>Most often.</summary>
    [Range(0, 10_000)]
    public required decimal Likely { get; init; }

    /// <summary>Hardly ever more.</summary>
    [Range(0, 10_000)]
    public required decimal High { get; init; }
}

/// <summary>Bounds for the length of an episode, in minutes on screen.</summary>
public sealed record ScreenBounds
{
    /// <summary>The shortest episode, minutes.</summary>
    [Range(0, 600)]
    public required decimal Least { get; init; }

    /// <summary>The longest episode, minutes.</summary>
    [Range(0, 600)]
    public required decimal Most { get; init; }
}

/// <summary>A state of the build worth showing.</summary>
public sealed record Milestone : IThing
{
    /// <summary>The id, unique among all milestones of the workshop.</summary>
    public Id Id { get; init; }

    /// <summary>The state in words: "wheels on".</summary>
    [StringLength(200, MinimumLength = 1)]
    public required string Name { get; init; }

    /// <summary>Whether seeing it satisfies, so that an episode may end there.</summary>
    public bool Payoff { get; init; } = true;

    /// <summary>Minutes on screen.</summary>
    public ThreePoint? ScreenMinutes { get; init; }

    /// <summary>
    /// Shown in one episode with the milestone after it: a cause and its result, or a reveal that stays whole. No proposed
    /// cut comes between them.
    /// </summary>
    public bool TogetherWithNext { get; init; }
}

/// <summary>One build told in episodes.</summary>
public sealed record Series : IThing
{
    /// <inheritdoc/>
    public Id Id { get; init; }

    /// <summary>The series' name.</summary>
    [StringLength(200, MinimumLength = 1)]
    public required string Name { get; init; }

    /// <summary>Active, resting or finished.</summary>
    public SeriesState State { get; init; }

    /// <summary>A resting series comes back on this day.</summary>
    public LocalDate? RestingUntil { get; init; }

    /// <summary>Its promise; assumed where absent.</summary>
    public Promise? Promise { get; init; }

    /// <summary>How long its episodes should be; free where absent.</summary>
    public ScreenBounds? ScreenMinutes { get; init; }

    /// <summary>An episode that is proposed shows at least so many milestones; one where absent.</summary>
    [Range(1, 50)]
    public int? FewestMilestones { get; init; }

    /// <summary>The milestones in the order of the story.</summary>
    public ValueList<Milestone> Milestones { get; init; } = [];

    /// <summary>
    /// Work written as on paper, a line each: "weld frame, 12 h". Import turns each line into a milestone and a task
    /// that follows the line above, and empties the list.
    /// </summary>
    [MaxLength(1_000)]
    public ValueList<string> Work { get; init; } = [];
}
