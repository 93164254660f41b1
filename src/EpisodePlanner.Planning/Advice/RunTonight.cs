using EpisodePlanner.Scheduling;
using NodaTime;

namespace EpisodePlanner.Planning;

/// <summary>A run that the plan starts before tomorrow noon, and what it would cost to start it a day later.</summary>
/// <param name="Stage">The run.</param>
/// <param name="PutOffTo">The day on which it could start instead.</param>
/// <param name="Moves">The uploads that would then be later, by plan; none where it can wait.</param>
public sealed record RunTonight(PlannedStage Stage, LocalDate PutOffTo, ValueList<MovedUpload> Moves)
{
    /// <summary>Whether an upload moves when it waits.</summary>
    public bool Must => Moves.Count > 0;
}

/// <summary>An upload that a change makes later.</summary>
/// <param name="Episode">The episode as planned.</param>
/// <param name="To">When it would go out instead; null where it would have no date.</param>
public sealed record MovedUpload(PlannedEpisode Episode, Instant? To);

/// <summary>Finds what must start tonight.</summary>
public static class RunsTonight
{
    private static readonly LocalTime Noon = new(12, 0);

    /// <summary>
    /// The runs that start before tomorrow noon, in order of their start. Each is put off to the next day and planned
    /// again, so that what it moves is a fact of the planner and not a guess.
    /// </summary>
    /// <param name="plan">The plan.</param>
    /// <param name="progress">Told the share done, 0 to 1.</param>
    /// <param name="stop">Ends the search; the runs looked at by then are returned.</param>
    public static ValueList<RunTonight> Of(Plan plan, IProgress<double>? progress = null, CancellationToken stop = default)
    {
        var runs = Stages(plan).ToList();
        var found = new List<RunTonight>();
        foreach (var run in runs.TakeWhile(_ => !stop.IsCancellationRequested))
        {
            found.Add(PutOff(plan, run));
            progress?.Report((double)found.Count / runs.Count);
        }

        return found.ToValueList();
    }

    /// <summary>The same runs, without asking what it would cost to put them off.</summary>
    public static ValueList<RunTonight> Planned(Plan plan) =>
        Stages(plan).Select(run => new RunTonight(run, PuttingOff.DayAfter(plan, run), [])).ToValueList();

    private static IEnumerable<PlannedStage> Stages(Plan plan) => plan.Stages.Where(stage => StartsTonight(plan, stage));

    private static bool StartsTonight(Plan plan, PlannedStage stage) =>
        stage is { Kind: StageKind.Run, Begun: false, Start: { } start } && start < TomorrowNoon(plan);

    private static Instant TomorrowNoon(Plan plan) =>
        plan.Now.Date.PlusDays(1).At(Noon).InZoneLeniently(plan.Zone).ToInstant();

    private static RunTonight PutOff(Plan plan, PlannedStage run)
    {
        var (day, later) = PuttingOff.ByADay(plan, run);
        return new RunTonight(run, day, later is null ? [] : Moves(plan, later));
    }

    private static ValueList<MovedUpload> Moves(Plan plan, Plan later)
    {
        var moments = later.Episodes.ToDictionary(episode => episode.Id, episode => episode.Publish);
        return plan.Episodes
            .Where(episode => episode.Publish is { } then && (moments[episode.Id] ?? Instant.MaxValue) > then)
            .Select(episode => new MovedUpload(episode, moments[episode.Id]))
            .ToValueList();
    }
}
