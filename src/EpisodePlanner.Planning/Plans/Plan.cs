using EpisodePlanner.Scheduling;
using NodaTime;

namespace EpisodePlanner.Planning;

/// <summary>What the planner computed from a <see cref="PlanRequest"/>. Nothing of it is stored as truth.</summary>
public sealed record Plan
{
    /// <summary>What was planned.</summary>
    public required PlanRequest Request { get; init; }

    /// <summary>The workshop's zone, in which local times and dates are meant.</summary>
    public required DateTimeZone Zone { get; init; }

    /// <summary>The moment until which the plan looks.</summary>
    public required Instant Horizon { get; init; }

    /// <summary>What is left to do, every stage of every task and of every episode's tail and every shot with time of its own, by start, then unplaced ones.</summary>
    public required ValueList<PlannedStage> Stages { get; init; }

    /// <summary>The episodes to come, those with a date first, by date; then by story.</summary>
    public required ValueList<PlannedEpisode> Episodes { get; init; }

    /// <summary>The silences of every series that is not finished, by name.</summary>
    public required ValueList<Outlook> Series { get; init; }

    /// <summary>The silences of the whole channel.</summary>
    public required Outlook Channel { get; init; }

    /// <summary>What the plan can't do, and what in the workshop has no effect yet; the gravest first.</summary>
    public required ValueList<Finding> Findings { get; init; }

    /// <summary>The bench problem behind the plan and its schedule, for checking and for whoever wants to look inside.</summary>
    public required BenchSchedule Schedule { get; init; }

    /// <summary>The rule of priority that made the schedule, in words.</summary>
    public required string Rule { get; init; }

    /// <summary>How many schedules were made.</summary>
    public required int Generated { get; init; }

    /// <summary>What the schedule is judged by.</summary>
    public required PlanWeights Weights { get; init; }

    /// <summary>The next upload, or null where none has a date.</summary>
    public PlannedEpisode? NextUpload => Episodes.FirstOrDefault(episode => episode.Publish is not null);

    /// <summary>The moment of planning on the wall clock.</summary>
    public ZonedDateTime Now => Request.PlannedAt.InZone(Zone);
}

/// <summary>What a schedule is judged by, in this order; less is better.</summary>
/// <param name="LateMinutes">Minutes by which told dates, needed-by dates and pinned slots are missed.</param>
/// <param name="Silence">
/// Sum of squares of days of silence beyond promises, a line after 30 days, at its least where an episode that is ready
/// may be held back for a later slot.
/// </param>
/// <param name="Moves">Stages that leave the accepted start of the next seven days.</param>
/// <param name="EndMinute">The end of the work, minutes from planning.</param>
public sealed record PlanWeights(long LateMinutes, long Silence, long Moves, long EndMinute)
{
    /// <summary>All of them, the weightiest first.</summary>
    public ValueList<long> InOrder => [LateMinutes, Silence, Moves, EndMinute];
}

/// <summary>How grave a finding is.</summary>
public enum FindingKind
{
    /// <summary>Work that can never be done as things stand.</summary>
    Impossible,

    /// <summary>A date, a greatest lag or a picture that the plan does not keep.</summary>
    Missed,

    /// <summary>Something in the workshop that has no effect on dates yet.</summary>
    NoEffect,

    /// <summary>Something worth knowing.</summary>
    Note,
}

/// <summary>Something the plan has to say about the workshop.</summary>
/// <param name="Kind">How grave.</param>
/// <param name="Where">The place, as in <see cref="Reason.Where"/>.</param>
/// <param name="Says">A sentence for people, with what would help where something would.</param>
public sealed record Finding(FindingKind Kind, string Where, string Says);
