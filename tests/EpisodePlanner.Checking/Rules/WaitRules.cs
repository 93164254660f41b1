namespace EpisodePlanner.Checking;

/// <summary>A wait takes its minutes as they are counted, and starts where it is glued to.</summary>
internal static class WaitRules
{
    public static void Check(Findings findings, int stage)
    {
        var about = findings.Problem.Stages[stage];
        var part = findings.Schedule.Parts(stage)[0];
        if (findings.Hours.WaitEnd(about, part.Start) is not { } end)
            findings.Add(stage, $"waits from {part.Start} for hours that never come");
        else if (part.End != end)
            findings.Add(stage, $"waits from {part.Start} to {part.End} instead of {end}");

        if (about.GluedTo != -1)
            CheckGlue(findings, stage, part.Start);
        else if (about.Begun && part.Start != 0)
            findings.Add(stage, "is going on and has to wait from minute 0");
    }

    private static void CheckGlue(Findings findings, int stage, int start)
    {
        var host = findings.Problem.Stages[stage].GluedTo;
        if (!findings.Schedule.IsPlaced(host))
            findings.Add(stage, $"is placed although '{findings.Problem.Stages[host].Name}', to which it is glued, is not");
        else if (findings.Schedule.Finish(host) != start)
            findings.Add(stage, $"starts at {start} and not at {findings.Schedule.Finish(host)}, the finish it is glued to");
    }
}
