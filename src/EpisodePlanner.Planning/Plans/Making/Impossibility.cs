using EpisodePlanner.Scheduling;
using EpisodePlanner.Scheduling.Networks;

namespace EpisodePlanner.Planning;

/// <summary>Says why a stage can never be done, and what would help.</summary>
internal sealed class Impossibility(PlanDraft draft, WorkshopNetwork network)
{
    /// <summary>Why a stage can never be done, what would help, and what stands in the way together where that is several things.</summary>
    public string Say(int stage)
    {
        var reasons = SmallestReasons.Of(draft.Problem, stage);
        var together = reasons.Count < 2 ? "" : $" Together these leave it no time, and any one of them could give way: {string.Join("; ", reasons.Select(Name))}.";
        return SayWhy(stage) + together;
    }

    private string Name(ImpossibleReason reason) => reason.Kind switch
    {
        ImpossibleKind.Hours => $"the hours of {draft.Problem.Stations[reason.Index].Name}",
        ImpossibleKind.Limit => draft.Problem.Limits[reason.Index].Name,
        ImpossibleKind.Presence => "that somebody must be there",
        ImpossibleKind.Date => $"the date before which \u201c{Stage(reason.Index)}\u201d may not start",
        ImpossibleKind.GreatestLag => $"that \u201c{Stage(draft.Problem.Links[reason.Index].To)}\u201d must follow \u201c{Stage(draft.Problem.Links[reason.Index].From)}\u201d so soon",
        ImpossibleKind.Permission => $"that \u201c{Stage(reason.Index)}\u201d may not run alone",
        ImpossibleKind.CountedHours => $"the hours in which \u201c{Stage(reason.Index)}\u201d is counted or looked at",
        _ => "the time planned for",
    };

    private string Stage(int stage) => draft.Bench.Stages[stage].Stage.Name;

    private string SayWhy(int stage)
    {
        var spec = draft.Problem.Stages[stage];
        if (network.UnkeptLink[stage] is >= 0 and var link)
        {
            return $"\u201c{spec.Name}\u201d can never be done: {SayUnkept(draft.Problem.Links[link])}.";
        }

        var mode = spec.Modes.MaxBy(m => Open(m).TotalWork)!;
        var why = Never(mode) ?? TooLate(stage, mode) ?? (spec.Kind == StageKind.Run ? SayRun(spec) : SayAttended(stage, mode));
        return $"\u201c{spec.Name}\u201d can never be done: {why}.";
    }

    /// <summary>A greatest lag that no moment keeps, with the time in which hours would help first.</summary>
    private string SayUnkept(BenchLink link)
    {
        var (verb, end) = (link.Kind is LinkKind.After or LinkKind.TogetherStart ? "start" : "be finished",
            link.Kind is LinkKind.After or LinkKind.TogetherFinish ? "end" : "start");
        var leaves = end == "end" ? network.EarlyFinish[link.From] : network.EarlyStart[link.From];
        var from = link.LagHours is { } hours ? hours.Finish(leaves, link.Lag) ?? draft.Problem.Horizon : leaves + link.Lag;
        var least = link.Lag <= 0 ? "" : $"at least {Words.Minutes(link.Lag)}{(link.LagHours is null ? "" : " of open hours")} and ";
        var what = $"it must {verb} {least}at most {Words.Minutes(link.AtMost!.Value)} after the {end} of \u201c{draft.Bench.Stages[link.From].Stage.Name}\u201d";
        return leaves + link.AtMost < from
            ? $"{what}, and both can't be; allow more time"
            : $"{what}, and no time at which it could be done comes so soon after any time for that one; open hours in between, "
                + $"first from {Moment(Math.Max(0, from))} to {Moment(leaves + link.AtMost.Value)}, or allow more time";
    }

    private string Moment(int minute) => Words.Moment(draft.Axis.LocalOf(Math.Min(minute, draft.Problem.Horizon)));

    private string? Never(StageMode mode)
    {
        var closed = Stations(mode).FirstOrDefault(s => draft.Problem.Stations[s].Hours.TotalWork == 0, -1);
        if (closed >= 0)
        {
            var name = draft.Problem.Stations[closed].Name;
            return IsByBooking(closed)
                ? $"{name} is open by booking only, and no booking lies ahead; book it again"
                : $"{name} is never open in the time planned for; give it hours";
        }

        var limit = mode.Limits.FirstOrDefault(l => draft.Problem.Limits[l].Open.TotalWork == 0, -1);
        return limit < 0 ? null : $"{draft.Problem.Limits[limit].Name} leave it no time at all";
    }

    /// <summary>Where the last opening is over before what it waits for can be done.</summary>
    private string? TooLate(int stage, StageMode mode)
    {
        var earliest = Earliest(stage);
        var open = Open(mode);
        if (open.TotalWork == 0 || open.NextOpen(earliest) is not null)
        {
            return null;
        }

        var first = Stations(mode).FirstOrDefault(s => draft.Problem.Stations[s].Hours.NextOpen(earliest) is null, -1);
        var name = first < 0 ? Names(mode) : draft.Problem.Stations[first].Name;
        var help = first >= 0 && IsByBooking(first) ? "book it again, later" : "give it later hours";
        return $"what it waits for is done {Words.Moment(draft.Axis.LocalOf(earliest))} at the earliest, and {name} is not open after that; {help}";
    }

    private int Earliest(int stage) => draft.Problem.Links
        .Where(link => link.To == stage && link.Kind == LinkKind.After)
        .Select(link => network.EarlyFinish[link.From] + Math.Max(0, link.Lag))
        .Append(draft.Problem.Stages[stage].NotBefore)
        .Max();

    private string SayRun(BenchStage spec)
    {
        var mode = spec.Modes.FirstOrDefault(m => m.RunsAlone, spec.Modes[0]);
        var open = mode.RunsAlone ? Open(mode) : Open(mode).Intersect(draft.Problem.Presence);
        var needed = mode.RunsAlone ? spec.Minutes : spec.FitMinutes;
        var ask = mode.RunsAlone
            ? "open the machine's hours"
            : "somebody must stay that long, the run must be split, or the machine and the task must both be allowed to run alone "
                + "(printers only; the maker's instructions, a smoke alarm and nothing flammable near come first)";
        return $"its run on {draft.Problem.Stations[mode.Machine].Name} needs {Words.Minutes(needed)} at a stretch"
            + (mode.RunsAlone ? "" : " with somebody there, nine times out of ten")
            + $", and the longest stretch is {Words.Minutes(Longest(open))}; {ask}";
    }

    private string SayAttended(int stage, StageMode mode)
    {
        var spec = draft.Problem.Stages[stage];
        var open = Open(mode).Clip(Earliest(stage), draft.Problem.Horizon);
        if (open.TotalWork == 0)
        {
            return $"{Names(mode)} are never open together; let their hours meet";
        }

        var needed = Math.Min(spec.MinimumBlock, spec.Minutes);
        return Longest(open) < needed
            ? $"it needs {Words.Minutes(needed)} at a stretch, and {Names(mode)} are open together for {Words.Minutes(Longest(open))} at most; "
                + "open longer hours or let it pause"
            : $"{Names(mode)} are open together for {Words.Minutes(open.TotalWork)} in all the time planned for, setting up and tidying included, "
                + $"and it needs {Words.Minutes(spec.Minutes)}; open more hours";
    }

    private bool IsByBooking(int station) => draft.Workshop.Places.Find(draft.Stations.IdOf(station)) is { ByBookingOnly: true };

    private string Names(StageMode mode) => string.Join(
        " and ",
        Stations(mode).Select(s => draft.Problem.Stations[s].Name).Concat(mode.Limits.Select(l => $"the time outside {draft.Problem.Limits[l].Name}")));

    private static IEnumerable<int> Stations(StageMode mode) => mode.Machine >= 0 ? mode.Stations.Append(mode.Machine) : mode.Stations;

    private IntervalCalendar Open(StageMode mode) => Stations(mode).Select(s => draft.Problem.Stations[s].Hours)
        .Concat(mode.Limits.Select(l => draft.Problem.Limits[l].Open))
        .Aggregate(IntervalCalendar.Always(draft.Problem.Horizon), (all, next) => all.Intersect(next));

    private static int Longest(IntervalCalendar calendar) => calendar.Spans().Select(span => span.Length).DefaultIfEmpty(0).Max();
}
