using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Planning;

/// <summary>Says why a stage can never be done, and what would help.</summary>
internal sealed class Impossibility(PlanDraft draft)
{
    public string Say(int stage)
    {
        var spec = draft.Problem.Stages[stage];
        var mode = spec.Modes[0];
        var never = Never(mode);
        var why = never is not null
            ? $"{never} is never open in the time planned for; give it hours"
            : spec.Kind == StageKind.Run ? SayRun(spec) : SayAttended(spec, mode);
        return $"\u201c{spec.Name}\u201d can never be done: {why}.";
    }

    private string? Never(StageMode mode)
    {
        var stations = (mode.Machine >= 0 ? mode.Stations.Append(mode.Machine) : mode.Stations).Select(s => draft.Problem.Stations[s]);
        var closed = stations.FirstOrDefault(station => station.Hours.TotalWork == 0);
        return closed?.Name ?? mode.Limits.Where(l => draft.Problem.Limits[l].Open.TotalWork == 0)
            .Select(l => $"the time outside {draft.Problem.Limits[l].Name}").FirstOrDefault();
    }

    private string SayRun(BenchStage spec)
    {
        var mode = spec.Modes.FirstOrDefault(m => !m.RunsAlone, spec.Modes[0]);
        var open = Open(mode).Intersect(mode.RunsAlone ? IntervalCalendar.Always(draft.Problem.Horizon) : draft.Problem.Presence);
        var longest = Longest(open);
        var machine = draft.Problem.Stations[mode.Machine].Name;
        var needed = mode.RunsAlone ? spec.Minutes : spec.FitMinutes;
        var ask = mode.RunsAlone
            ? "open the machine's hours"
            : "somebody must stay that long, the run must be split, or the machine and the task must both be allowed to run alone "
                + "(printers only; the maker's instructions, a smoke alarm and nothing flammable near come first)";
        return $"its run on {machine} needs {Words.Minutes(needed)} at a stretch"
            + (mode.RunsAlone ? "" : " with somebody there, nine times out of ten")
            + $", and the longest stretch is {Words.Minutes(longest)}; {ask}";
    }

    private string SayAttended(BenchStage spec, StageMode mode)
    {
        var names = string.Join(", ", mode.Stations.Select(s => draft.Problem.Stations[s].Name)
            .Concat(mode.Limits.Select(l => $"the time outside {draft.Problem.Limits[l].Name}")));
        var open = Open(mode);
        if (open.TotalWork == 0)
        {
            return $"{names} are never open together; let their hours meet";
        }

        var needed = Math.Min(spec.MinimumBlock, spec.Minutes);
        return Longest(open) < needed
            ? $"it needs {Words.Minutes(needed)} at a stretch, and {names} are open together for {Words.Minutes(Longest(open))} at most; "
                + "open longer hours or let it pause"
            : $"{names} are open together for {Words.Minutes(open.TotalWork)} in all the time planned for, and it needs {Words.Minutes(spec.Minutes)}; open more hours";
    }

    private IntervalCalendar Open(StageMode mode) =>
        (mode.Machine >= 0 ? mode.Stations.Append(mode.Machine) : mode.Stations).Select(s => draft.Problem.Stations[s].Hours)
        .Concat(mode.Limits.Select(l => draft.Problem.Limits[l].Open))
        .Aggregate(IntervalCalendar.Always(draft.Problem.Horizon), (all, next) => all.Intersect(next));

    private static int Longest(IntervalCalendar calendar) => calendar.Spans().Select(span => span.Length).DefaultIfEmpty(0).Max();
}
