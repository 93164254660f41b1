namespace EpisodePlanner.Scheduling;

/// <summary>What must hold for the parts of a <see cref="BenchProblem"/>.</summary>
internal static class BenchRules
{
    public static IReadOnlyList<string> Check(BenchInput input)
    {
        var reasons = new List<string>();
        if (input.Horizon is < 1 or > IntervalCalendar.MaximumMinute)
        {
            reasons.Add($"The horizon of {input.Horizon} minutes must lie between 1 and {IntervalCalendar.MaximumMinute}.");
        }

        for (var i = 0; i < input.Stages.Count; i++)
        {
            CheckStage(input, i, reasons);
        }

        foreach (var link in input.Links)
        {
            CheckLink(input, link, reasons);
        }

        return reasons;
    }

    public static string CircleReason(BenchInput input, IReadOnlyList<int> circle) =>
        $"These stages wait for each other in a circle: {string.Join(" → ", circle.Append(circle[0]).Select(i => input.Stages[i].Name))}.";

    private static void CheckStage(BenchInput input, int index, List<string> reasons)
    {
        var stage = input.Stages[index];
        var least = Math.Min(Math.Min(stage.Minutes, stage.NotBefore), Math.Min(stage.LoadMinutes, stage.UnloadMinutes));
        var total = (long)stage.Minutes + stage.LoadMinutes + stage.UnloadMinutes + Math.Max(0, stage.FitMinutes);
        if (least < 0 || total > IntervalCalendar.MaximumMinute)
        {
            reasons.Add($"'{stage.Name}' has minutes below 0 or more than any plan can hold ({IntervalCalendar.MaximumMinute}).");
        }

        if (stage.Kind == StageKind.Run && stage.FitMinutes < stage.Minutes)
        {
            reasons.Add($"'{stage.Name}' must fit into at least its own {stage.Minutes} minutes, not {stage.FitMinutes}.");
        }

        if (stage.Modes.Count == 0)
        {
            reasons.Add($"'{stage.Name}' has no choice of stations.");
        }

        if (stage.GluedTo != -1 && !IsGlueSound(input, index))
        {
            reasons.Add(
                $"'{stage.Name}' can follow a stage without a gap only as a wait with one choice of places and no date, after "
                + "one attended stage of some minutes that no other wait is glued to, and linked to nothing but its finish.");
        }

        if ((stage.LoadTakesHands && stage.LoadMinutes == 0) || (stage.UnloadTakesHands && stage.UnloadMinutes == 0))
        {
            reasons.Add($"'{stage.Name}' can't take hands for a load or unload of no minutes.");
        }

        foreach (var mode in stage.Modes)
        {
            CheckMode(input, stage, mode, reasons);
        }
    }

    private static bool IsGlueSound(BenchInput input, int index)
    {
        var wait = input.Stages[index];
        return InRange(wait.GluedTo, input.Stages.Count)
            && wait is { Kind: StageKind.Wait, Modes.Count: 1, Begun: false, NotBefore: 0 }
            && input.Stages[wait.GluedTo] is { Kind: StageKind.Attended, Minutes: > 0 }
            && input.Stages.Count(other => other.GluedTo == wait.GluedTo) == 1
            && input.Links.Where(link => link.To == index).Select(link => link with { AtMost = link.AtMost < 0 ? link.AtMost : null })
                .SequenceEqual([new BenchLink(wait.GluedTo, index, LinkKind.After)]);
    }

    private static void CheckMode(BenchInput input, BenchStage stage, StageMode mode, List<string> reasons)
    {
        var known = mode.Stations.All(s => InRange(s, input.Stations.Count))
            && mode.Limits.All(l => InRange(l, input.Limits.Count));
        if (!known || mode.Stations.Distinct().Count() != mode.Stations.Count)
        {
            reasons.Add($"'{stage.Name}' refers to a station or a limit that does not exist, or to a station twice.");
        }

        var isRun = stage.Kind == StageKind.Run;
        if (isRun != (mode.Machine != -1)
            || (isRun && (!InRange(mode.Machine, input.Stations.Count) || mode.Stations.Contains(mode.Machine))))
        {
            reasons.Add($"'{stage.Name}' must name one machine beside its other stations if it is a run, and none if it is not.");
        }
    }

    private static void CheckLink(BenchInput input, BenchLink link, List<string> reasons)
    {
        if (!InRange(link.From, input.Stages.Count) || !InRange(link.To, input.Stages.Count))
        {
            reasons.Add($"A link leads from {link.From} to {link.To}; there are {input.Stages.Count} stages.");
        }
        else if (IsTooLarge(link.Lag) || (link.LagHours is not null && link.Lag < 0))
        {
            reasons.Add($"The lag of {link.Lag} minutes before '{input.Stages[link.To].Name}' is too large, or negative in open minutes.");
        }
        else if (IsTooLarge(link.AtMost ?? 0))
        {
            reasons.Add($"The greatest lag of {link.AtMost} minutes before '{input.Stages[link.To].Name}' is too large.");
        }
    }

    private static bool IsTooLarge(int lag) => Math.Abs((long)lag) > IntervalCalendar.MaximumMinute;

    private static bool InRange(int index, int count) => index >= 0 && index < count;
}
