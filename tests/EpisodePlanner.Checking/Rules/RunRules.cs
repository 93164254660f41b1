using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Checking;

/// <summary>A machine run: load and run without a gap, the unload when somebody can come.</summary>
internal static class RunRules
{
    public static void Check(Findings findings, int stage)
    {
        var parts = findings.Schedule.Parts(stage);
        var load = parts.Length == 3 ? parts[0] : (SchedulePart?)null;
        CheckUnload(findings, stage, parts[^2], parts[^1]);
        if (findings.Problem.Stages[stage].Begun)
        {
            CheckBegun(findings, stage, load, parts[^2]);
            return;
        }

        CheckLoad(findings, stage, parts[0], parts[1]);
        CheckRun(findings, stage, parts[1]);
    }

    private static void CheckBegun(Findings findings, int stage, SchedulePart? load, SchedulePart run)
    {
        CheckLength(findings, stage, "runs", run, findings.Problem.Stages[stage].Minutes);
        if (run.Start != 0 || (load is { } part && (part.Start != 0 || part.End != 0)))
            findings.Add(stage, "is going on and has to run from minute 0 without a load");
    }

    private static void CheckLoad(Findings findings, int stage, SchedulePart load, SchedulePart run)
    {
        var about = findings.Problem.Stages[stage];
        var mode = about.Modes[load.Mode];
        var when = new Stretch(load.Start, load.End);
        CheckLength(findings, stage, "loads", load, about.LoadMinutes);
        if (load.End != run.Start)
            findings.Add(stage, $"is loaded at {load.End} and runs only at {run.Start}");

        if (load.End > load.Start)
            findings.NeedOpen(stage, "loads", when, [mode.Machine], mode.Limits);

        CheckHands(findings, stage, "loads", when, about.LoadTakesHands ? mode : null);
    }

    private static void CheckRun(Findings findings, int stage, SchedulePart run)
    {
        var about = findings.Problem.Stages[stage];
        var mode = about.Modes[run.Mode];
        CheckLength(findings, stage, "runs", run, about.Minutes);
        if (run.End > run.Start)
            findings.NeedOpen(stage, "runs", new Stretch(run.Start, run.End), [mode.Machine], mode.Limits);

        if (!mode.RunsAlone && about.FitMinutes > 0)
        {
            var fit = new Stretch(run.Start, run.Start + about.FitMinutes);
            findings.NeedOpen(stage, "has to fit", fit, [mode.Machine], mode.Limits);
            findings.NeedPresence(stage, "may not run alone but runs or has to fit", fit);
        }
    }

    private static void CheckUnload(Findings findings, int stage, SchedulePart run, SchedulePart unload)
    {
        var about = findings.Problem.Stages[stage];
        var when = new Stretch(unload.Start, unload.End);
        CheckLength(findings, stage, "unloads", unload, about.UnloadMinutes);
        if (about.LookAt is { } times && !(findings.Hours.Of(times).Next(run.End) <= unload.Start))
            findings.Add(stage, $"is unloaded at {unload.Start}, before its end at {run.End} can be noticed");

        CheckHands(findings, stage, "unloads", when, about.UnloadTakesHands ? about.Modes[unload.Mode] : null);
    }

    private static void CheckHands(Findings findings, int stage, string doing, Stretch when, StageMode? hands)
    {
        if (hands is null)
            findings.NeedPresence(stage, doing, when);
        else
            findings.NeedOpen(stage, doing, when, hands.Stations, []);
    }

    private static void CheckLength(Findings findings, int stage, string doing, SchedulePart part, int minutes)
    {
        if (part.End - part.Start != minutes)
            findings.Add(stage, $"{doing} for {part.End - part.Start} minutes instead of {minutes}");
    }
}
