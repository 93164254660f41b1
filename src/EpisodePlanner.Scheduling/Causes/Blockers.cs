using EpisodePlanner.Scheduling.Engine;

namespace EpisodePlanner.Scheduling.Causes;

/// <summary>Collects what may hold a placed stage back: candidates, which <see cref="Relaxation"/> then tries.</summary>
internal sealed class Blockers(CauseContext context)
{
    private readonly BenchSchedule schedule = context.Schedule;
    private readonly CompiledProblem compiled = context.Compiled;
    private readonly Occupancy occupancy = context.Occupancy;

    /// <summary>
    /// What stands in the way of starting a minute earlier; those easiest to understand first. Before all the greatest lags
    /// that may have it wait although it could have been done long before.
    /// </summary>
    public List<Blocker> AtMinuteBefore(int stage)
    {
        var start = schedule.Start(stage);
        var blockers = GreatestLags(stage).Where(_ => start > 0).Select(lag => lag.Blocker).ToList();
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

    /// <summary>The date that a link asks of its later end.</summary>
    public int BoundOf(int link)
    {
        var from = compiled.LinkFrom[link];
        return compiled.WithLag(link, compiled.LeavesFinish(link) ? schedule.Finish(from) : schedule.Start(from));
    }

    /// <summary>What the stages that must follow soon ask of a stage, or of a wait glued to it: a least start or a least finish.</summary>
    public IEnumerable<(Blocker Blocker, int Least, bool OfFinish)> GreatestLags(int stage)
    {
        if (!compiled.GreatestLags.HoldsBack[stage])
        {
            yield break;
        }

        int[] leaving = compiled.GluedNext[stage] is >= 0 and var wait ? [stage, wait] : [stage];
        foreach (var link in leaving.SelectMany(from => compiled.Problem.Graph.Outgoing(from).ToArray()))
        {
            var to = compiled.LinkTo[link];
            if (compiled.GreatestLags.IsAny(link) && schedule.IsPlaced(to))
            {
                var arrives = compiled.Arrives(link, schedule.Start(to), schedule.Finish(to));
                var (_, least, ofFinish) = compiled.Host(link, compiled.GreatestLags.Earliest(link, arrives));
                yield return (new Blocker(CauseKind.GreatestLag, to, Link: link), least, ofFinish);
            }
        }
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
    public List<Blocker> BesideTheMinuteBefore(int stage)
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
    public IEnumerable<Blocker> Everything(int stage)
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
}
