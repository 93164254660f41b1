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
        relaxation = new Relaxation(context);
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

        var blockers = AtMinuteBefore(stage);
        if (schedule.Start(stage) == 0 && blockers.Count == 0)
        {
            return Alone(new Blocker(CauseKind.Now));
        }

        if (blockers.Count == 1 && OnlyTheMinuteBeforeMatters(stage))
        {
            return Alone(InAcceptedOrder(stage, blockers[0]));
        }

        var all = blockers.Concat(BesideTheMinuteBefore(stage)).ToList();
        return OneOf(stage, blockers) ?? OneHolder(stage, blockers) ?? Fewest(stage, blockers)
            ?? OneOf(stage, all) ?? Fewest(stage, all) ?? Fewest(stage, [.. all.Union(Everything(stage))])
            ?? Alone(all[0]);
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

    /// <summary>As few blockers as possible that can be relaxed together; null where even all of them are not enough.</summary>
    private StartCause? Fewest(int stage, List<Blocker> candidates)
    {
        if (candidates.Count < 2 || !relaxation.StartsEarlier(stage, candidates))
        {
            return null;
        }

        var needed = candidates.ToList();
        foreach (var candidate in Enumerable.Reverse(candidates))
        {
            var others = needed.Where(b => b != candidate).ToList();
            if (others.Count > 0 && relaxation.StartsEarlier(stage, others))
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

    /// <summary>What stands in the way of starting a minute earlier; those easiest to understand first.</summary>
    private List<Blocker> AtMinuteBefore(int stage)
    {
        var start = schedule.Start(stage);
        var blockers = new List<Blocker>();
        foreach (var link in compiled.Problem.Graph.Incoming(stage))
        {
            if (compiled.HoldsStart(link) && BoundOf(link) == start && start > 0)
            {
                blockers.Add(new Blocker(CauseKind.Predecessor, compiled.LinkFrom[link], Link: link));
            }
        }

        if (compiled.NotBefore[stage] == start && start > 0)
        {
            blockers.Add(new Blocker(CauseKind.Date));
        }

        if (start > 0 && (compiled.Kinds[stage] != StageKind.Attended || compiled.Minutes[stage] > 0))
        {
            AddStations(stage, start - 1, blockers);
        }

        return blockers;
    }

    private int BoundOf(int link)
    {
        var from = compiled.LinkFrom[link];
        return compiled.WithLag(link, compiled.LeavesFinish(link) ? schedule.Finish(from) : schedule.Start(from));
    }

    private void AddStations(int stage, int minute, List<Blocker> blockers)
    {
        var spec = compiled.Problem.Stages[stage];
        var mode = compiled.Modes[stage][schedule.Parts(stage)[0].Mode];
        var isRun = spec.Kind == StageKind.Run;
        var byHand = isRun && spec.LoadTakesHands && spec.LoadMinutes > 0;
        int[] stations = isRun ? [mode.Machine, .. byHand ? mode.All : []] : mode.All;
        foreach (var station in stations)
        {
            foreach (var holding in occupancy.Within(station, minute, minute + 1))
            {
                if (holding.Stage != stage)
                {
                    blockers.Add(new Blocker(CauseKind.StationHeld, holding.Stage, station));
                }
            }
        }

        if (spec.Kind == StageKind.Wait)
        {
            return;
        }

        blockers.AddRange(stations.Where(s => !compiled.Problem.Stations[s].Hours.IsOpen(minute))
            .Select(s => new Blocker(CauseKind.ClosedHours, Station: s)));
        blockers.AddRange(mode.LimitIds.Where(l => !compiled.Problem.Limits[l].Open.IsOpen(minute))
            .Select(l => new Blocker(CauseKind.ClosedHours, Limit: l)));
        var presence = compiled.Problem.Presence;
        if (isRun && ((!byHand && !presence.IsOpen(minute)) || (!mode.RunsAlone && !presence.IsOpen(minute + spec.LoadMinutes))))
        {
            blockers.Add(new Blocker(CauseKind.Presence));
        }
    }

    /// <summary>What can hold a stage although the minute before its start is open and free.</summary>
    private List<Blocker> BesideTheMinuteBefore(int stage)
    {
        var blockers = new List<Blocker>();
        foreach (var link in compiled.Problem.Graph.Incoming(stage))
        {
            if (!compiled.HoldsStart(link))
            {
                blockers.Add(new Blocker(CauseKind.Predecessor, compiled.LinkFrom[link], Link: link));
            }
        }

        AddBehindSetUp(stage, blockers);
        if (compiled.Kinds[stage] == StageKind.Attended)
        {
            blockers.Add(new Blocker(CauseKind.MinimumBlock));
        }

        if (compiled.HasSittings)
        {
            blockers.Add(new Blocker(CauseKind.SettingUp));
        }

        return blockers;
    }

    /// <summary>Where the minutes before are for setting up, and for tidying what came before: what stands before these.</summary>
    private void AddBehindSetUp(int stage, List<Blocker> blockers)
    {
        var mode = compiled.Modes[stage][schedule.Parts(stage)[0].Mode];
        var pads = new[] { mode.SetUp, mode.SetUp + compiled.TidyByMark.Max() }.Where(pad => compiled.HasSittings && pad > 0);
        foreach (var minute in pads.Select(pad => schedule.Start(stage) - pad - 1).Where(minute => minute >= 0).Distinct())
        {
            AddStations(stage, minute, blockers);
        }
    }

    /// <summary>
    /// All that could play a part: hours, presence, and whatever takes one of the stations while the stage, with a wait
    /// glued to it, is done. Where a station stays taken, or a wait follows, what comes later can hold an earlier start.
    /// </summary>
    private IEnumerable<Blocker> Everything(int stage)
    {
        var mode = compiled.Modes[stage][schedule.Parts(stage)[0].Mode];
        var wait = compiled.GluedNext[stage];
        var glued = wait < 0 ? [] : compiled.Modes[wait][0].All;
        var end = wait < 0 ? schedule.Finish(stage) : schedule.Finish(wait);
        var stations = mode.All.Concat(glued).Concat(mode.Machine < 0 ? [] : [mode.Machine]).Distinct().ToList();
        foreach (var station in stations)
        {
            yield return new Blocker(CauseKind.ClosedHours, Station: station);
            foreach (var holder in Holders(station, end).Where(holder => holder != stage && holder != wait))
            {
                yield return new Blocker(CauseKind.StationHeld, holder, station);
            }
        }

        yield return new Blocker(CauseKind.Presence);
    }

    private List<int> Holders(int station, int end)
    {
        var holders = new List<int>();
        foreach (var holding in occupancy.Within(station, 0, end))
        {
            holders.Add(holding.Stage);
        }

        return [.. holders.Distinct()];
    }

    private int NextInChain(int stage, StartCause cause) => cause.Cause.Kind switch
    {
        CauseKind.Predecessor or CauseKind.StationHeld or CauseKind.AcceptedOrder => cause.Cause.Stage,
        CauseKind.ClosedHours or CauseKind.Presence or CauseKind.MinimumBlock or CauseKind.SettingUp => LastBefore(stage),
        _ => -1,
    };

    /// <summary>The stage waited for, or the holder of a needed station, that let go last before a start; −1 for none.</summary>
    private int LastBefore(int stage)
    {
        var (last, minute) = (-1, 0);
        foreach (var link in compiled.Problem.Graph.Incoming(stage))
        {
            if (compiled.HoldsStart(link) && BoundOf(link) > minute)
            {
                (last, minute) = (compiled.LinkFrom[link], BoundOf(link));
            }
        }

        var mode = compiled.Modes[stage][schedule.Parts(stage)[0].Mode];
        int[] stations = mode.Machine >= 0 ? [mode.Machine] : mode.All;
        foreach (var station in stations)
        {
            if (occupancy.LastEndingBy(station, schedule.Start(stage), stage) is { } holding && holding.End > minute)
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
