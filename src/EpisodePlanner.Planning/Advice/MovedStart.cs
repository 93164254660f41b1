using NodaTime;

namespace EpisodePlanner.Planning;

/// <summary>A stage that leaves the start which the maker accepted for it in the next seven days.</summary>
/// <param name="Stage">The stage as planned now.</param>
/// <param name="Accepted">The accepted start.</param>
/// <param name="Because">Why it does not start earlier than now planned, to follow "because"; null where it has no start any more.</param>
public sealed record MovedStart(PlannedStage Stage, Instant Accepted, string? Because)
{
    /// <summary>Minutes by which it starts later, negative for earlier; null where it has no start any more.</summary>
    public long? Minutes => Stage.Start is { } start ? (long)(start - Accepted).TotalMinutes : null;
}

/// <summary>Compares a plan with the one that was accepted.</summary>
public static class MovedStarts
{
    private static readonly Duration Week = Duration.FromDays(7);

    /// <summary>
    /// What moves against the accepted plan within seven days from the moment of planning, by accepted start. Work that is
    /// done or going on has not moved; nothing is told where no plan was accepted.
    /// </summary>
    public static ValueList<MovedStart> Of(Plan plan)
    {
        var workshop = plan.Request.Workshop;
        var stages = plan.Stages.ToDictionary(stage => stage.Key);
        return (workshop.Accepted?.Starts ?? [])
            .Where(start => start.Start >= plan.Request.PlannedAt && start.Start < plan.Request.PlannedAt + Week)
            .Select(start => (Stage: stages.GetValueOrDefault(AcceptedStarts.KeyOf(workshop, start)), start.Start))
            .Where(pair => pair.Stage is { Begun: false } stage && stage.Start != pair.Start)
            .Select(pair => new MovedStart(pair.Stage!, pair.Start, pair.Stage!.Cause?.Says))
            .OrderBy(moved => moved.Accepted)
            .ThenBy(moved => moved.Stage.Index)
            .ToValueList();
    }
}
