using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Checking;

/// <summary>The parts of a stage are of the kinds, modes and order of its kind, within the plan.</summary>
internal static class PartRules
{
    /// <summary>Whether the other rules can rely on the parts.</summary>
    public static bool Check(Findings findings, int stage)
    {
        var parts = findings.Schedule.Parts(stage).ToArray();
        var sound = HasKinds(findings, stage, parts) & HasModes(findings, stage, parts) & IsInOrder(findings, stage, parts);
        CheckSpan(findings, stage, parts);
        return sound;
    }

    private static bool HasKinds(Findings findings, int stage, SchedulePart[] parts)
    {
        var kinds = parts.Select(p => p.Kind).ToArray();
        var about = findings.Problem.Stages[stage];
        var right = about.Kind switch
        {
            StageKind.Attended => kinds.All(k => k == PartKind.Work),
            StageKind.Wait => kinds is [PartKind.Wait],
            _ => kinds is [PartKind.Load, PartKind.Run, PartKind.Unload]
                || (about.Begun && kinds is [PartKind.Run, PartKind.Unload]),
        };
        if (!right)
            findings.Add(stage, $"has the wrong parts: {string.Join(", ", kinds)}");

        return right;
    }

    private static bool HasModes(Findings findings, int stage, SchedulePart[] parts)
    {
        var modes = findings.Problem.Stages[stage].Modes;
        if (!parts.All(p => p.Mode >= 0 && p.Mode < modes.Count))
        {
            findings.Add(stage, "uses a mode it does not have");
            return false;
        }

        if (parts.All(p => p.Mode == parts[0].Mode || IsUnloadOfSameMachine(p, modes, parts[0].Mode)))
            return true;

        findings.Add(stage, "changes its mode between parts");
        return false;
    }

    private static bool IsUnloadOfSameMachine(SchedulePart part, IReadOnlyList<StageMode> modes, int mode) =>
        part.Kind == PartKind.Unload && modes[part.Mode].Machine == modes[mode].Machine;

    private static bool IsInOrder(Findings findings, int stage, SchedulePart[] parts)
    {
        var forward = parts.All(p => p.Start <= p.End);
        var ordered = parts.Zip(parts.Skip(1)).All(pair => pair.First.End <= pair.Second.Start);
        if (!forward || !ordered)
            findings.Add(stage, "has parts that overlap or run backwards");

        return forward && ordered;
    }

    private static void CheckSpan(Findings findings, int stage, SchedulePart[] parts)
    {
        var about = findings.Problem.Stages[stage];
        var start = parts.Min(p => p.Start);
        if (start < 0)
            findings.Add(stage, $"starts at {start}, before minute 0");
        else if (start < about.NotBefore && !about.Begun)
            findings.Add(stage, $"starts at {start}, before its date at {about.NotBefore}");

        if (parts.Max(p => p.End) > findings.Problem.Horizon)
            findings.Add(stage, $"ends after the horizon at {findings.Problem.Horizon}");
    }
}
