using EpisodePlanner.Scheduling.Engine;

namespace EpisodePlanner.Scheduling.Causes;

/// <summary>
/// Says of a finished schedule why each stage does not start earlier, and follows these causes back. A cause is what
/// stands in the way at the minute before the start; where several things do, one that can be relaxed alone is named if
/// there is one, and all of them together if not.
/// </summary>
public sealed class CauseFinder
{
    private readonly BenchSchedule schedule;
    private readonly CompiledProblem compiled;
    private readonly Occupancy occupancy;
    private readonly Relaxation relaxation;
    private readonly Blockers blockers;
    private readonly Dictionary<int, int> acceptedRanks;
    private readonly StartCause?[] explained;

    /// <summary>Prepares to explain a schedule.</summary>
    /// <param name="schedule">A schedule made by the scheduler: every stage as early as the others let it.</param>
    /// <param name="acceptedOrder">The accepted order that it follows; empty where it follows none.</param>
    public CauseFinder(BenchSchedule schedule, IReadOnlyList<int>? acceptedOrder = null)
    {
        var context = new CauseContext(schedule);
        this.schedule = schedule;
        compiled = context.Compiled;
        occupancy = context.Occupancy;
        explained = new StartCause?[schedule.Problem.Stages.Count];
        blockers = new Blockers(context);
        relaxation = new Relaxation(context, blockers);
        acceptedRanks = (acceptedOrder ?? []).Select((stage, rank) => (stage, rank)).ToDictionary(pair => pair.stage, pair => pair.rank);
    }

    /// <summary>Why a placed stage starts when it does.</summary>
    public StartCause Explain(int stage) => explained[stage] ??= Find(stage);

    private StartCause Find(int stage)
    {
        if (compiled.Begun[stage])
        {
            return Alone(new Blocker(CauseKind.Begun));
        }

        if (compiled.Problem.Stages[stage].GluedTo is >= 0 and var host)
        {
            return Alone(new Blocker(CauseKind.Predecessor, host));
        }

        var inTheWay = blockers.AtMinuteBefore(stage);
        if (schedule.Start(stage) == 0 && inTheWay.Count == 0)
        {
            return Alone(new Blocker(CauseKind.Now));
        }

        if (inTheWay.Count == 1 && OnlyTheMinuteBeforeMatters(stage))
        {
            return Alone(InAcceptedOrder(stage, inTheWay[0]));
        }

        var all = inTheWay.Concat(blockers.BesideTheMinuteBefore(stage)).ToList();
        return OneOf(stage, inTheWay) ?? OneHolder(stage, inTheWay) ?? Fewest(stage, inTheWay)
            ?? OneOf(stage, all) ?? Fewest(stage, all) ?? Fewest(stage, [.. all.Union(blockers.Everything(stage))], allTheWay: true)
            ?? Alone(all.Concat(blockers.Everything(stage)).First());
    }

    /// <summary>
    /// The chain of causes that decides when a stage starts, from it back to something that no other stage decides. A
    /// stage that only waits for open hours is followed by the one that kept it from the hours before.
    /// </summary>
    public IReadOnlyList<ChainStep> Chain(int stage)
    {
        var steps = new List<ChainStep>();
        var seen = new HashSet<int>();
        for (var at = stage; at >= 0 && seen.Add(at);)
        {
            var cause = Explain(at);
            var next = NextInChain(at, cause);
            steps.Add(new ChainStep(at, cause, seen.Contains(next) ? -1 : next));
            at = next;
        }

        return steps;
    }

    /// <summary>The first blocker that can be relaxed alone, or null.</summary>
    private StartCause? OneOf(int stage, List<Blocker> candidates)
    {
        foreach (var candidate in candidates)
        {
            if (relaxation.StartsEarlier(stage, [candidate]))
            {
                return Alone(InAcceptedOrder(stage, candidate));
            }
        }

        return null;
    }

    /// <summary>Another stage that holds it in several ways at once: takes several stations, or one and is waited for.</summary>
    private StartCause? OneHolder(int stage, List<Blocker> candidates)
    {
        foreach (var holder in candidates.Where(b => b.Stage >= 0).GroupBy(b => b.Stage).Where(group => group.Count() > 1))
        {
            if (relaxation.StartsEarlier(stage, [.. holder]))
            {
                return new StartCause(InAcceptedOrder(stage, holder.First()), [.. holder.Skip(1)]);
            }
        }

        return null;
    }

    /// <summary>
    /// As few blockers as possible that can be relaxed together, those placed after the stage only where they must be among
    /// them; null where even all of them are not enough.
    /// </summary>
    private StartCause? Fewest(int stage, List<Blocker> candidates, bool allTheWay = false)
    {
        if (candidates.Count < 2 || !relaxation.StartsEarlier(stage, candidates, allTheWay))
        {
            return null;
        }

        var needed = candidates.OrderBy(b => b.Stage >= 0 && !occupancy.WasPlacedBefore(b.Stage, stage)).ToList();
        foreach (var candidate in Enumerable.Reverse(needed.ToArray()))
        {
            var others = needed.Where(b => b != candidate).ToList();
            if (others.Count > 0 && relaxation.StartsEarlier(stage, others, allTheWay))
            {
                needed = others;
            }
        }

        return new StartCause(InAcceptedOrder(stage, needed[0]), [.. needed.Skip(1)]);
    }

    /// <summary>Whether a stage with its minute before free could surely have started then.</summary>
    private bool OnlyTheMinuteBeforeMatters(int stage)
    {
        var spec = compiled.Problem.Stages[stage];
        return compiled.GluedNext[stage] < 0 && !spec.StaysSetUp && !compiled.HasSittings
            && !compiled.GreatestLags.HoldsBack[stage]
            && !compiled.Problem.Graph.Incoming(stage).ToArray().Any(link => !compiled.HoldsStart(link));
    }

    private static StartCause Alone(Blocker blocker) => new(blocker, []);

    private Blocker InAcceptedOrder(int stage, Blocker blocker) =>
        blocker.Kind == CauseKind.StationHeld
        && acceptedRanks.TryGetValue(blocker.Stage, out var first)
        && acceptedRanks.TryGetValue(stage, out var second)
        && first < second
            ? blocker with { Kind = CauseKind.AcceptedOrder }
            : blocker;

    private int NextInChain(int stage, StartCause cause) => cause.Cause.Kind switch
    {
        CauseKind.Predecessor or CauseKind.GreatestLag or CauseKind.StationHeld or CauseKind.AcceptedOrder => cause.Cause.Stage,
        CauseKind.ClosedHours or CauseKind.Presence or CauseKind.MinimumBlock or CauseKind.SettingUp => LastBefore(stage),
        _ => -1,
    };

    /// <summary>The stage waited for, or the holder of a needed station, that let go last before a start; −1 for none.</summary>
    private int LastBefore(int stage)
    {
        var (last, minute) = (-1, 0);
        foreach (var link in compiled.Problem.Graph.Incoming(stage))
        {
            if (compiled.HoldsStart(link) && blockers.BoundOf(link) > minute)
            {
                (last, minute) = (compiled.LinkFrom[link], blockers.BoundOf(link));
            }
        }

        var mode = compiled.Modes[stage][schedule.Parts(stage)[0].Mode];
        int[] stations = mode.Machine >= 0 ? [mode.Machine] : mode.All;
        foreach (var station in stations)
        {
            if (occupancy.LastInItsWay(station, schedule.Start(stage), stage) is { } holding && holding.End > minute)
            {
                (last, minute) = (holding.Stage, holding.End);
            }
        }

        return last;
    }
}

/// <summary>One step of a chain.</summary>
/// <param name="Stage">The stage.</param>
/// <param name="Cause">Why it does not start earlier.</param>
/// <param name="Next">The stage that comes next on the way back; −1 at the chain's beginning.</param>
public readonly record struct ChainStep(int Stage, StartCause Cause, int Next);
