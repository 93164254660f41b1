using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Checking;

/// <summary>
/// Says whether a bench schedule keeps every rule of its problem. Written from the rules, without the scheduler's code.
/// Takes O(n log n) for n parts.
/// </summary>
public static class ScheduleChecker
{
    /// <summary>Every rule that a schedule breaks, a plain sentence each; none where it is feasible.</summary>
    public static IReadOnlyList<string> Check(BenchSchedule schedule)
    {
        var findings = new Findings(schedule);
        for (var stage = 0; stage < findings.Problem.Stages.Count; stage++)
            CheckStage(findings, stage);

        OrderRules.Check(findings);
        StationRules.Check(findings);
        SittingRules.Check(findings);
        LinkRules.Check(findings);
        return findings.Sentences;
    }

    /// <summary>
    /// Greatest lags out of or into what is going on that are exceeded, a sentence each. These do not make a schedule
    /// infeasible.
    /// </summary>
    public static IReadOnlyList<string> AtMostBroken(BenchSchedule schedule)
    {
        var findings = new Findings(schedule);
        GreatestLags.Check(findings, binding: false);
        return findings.Sentences;
    }

    private static void CheckStage(Findings findings, int stage)
    {
        if (!findings.Schedule.IsPlaced(stage) || !PartRules.Check(findings, stage))
            return;

        findings.WellFormed[stage] = true;
        switch (findings.Problem.Stages[stage].Kind)
        {
            case StageKind.Attended:
                AttendedRules.Check(findings, stage);
                break;
            case StageKind.Run:
                RunRules.Check(findings, stage);
                break;
            case StageKind.Wait:
                WaitRules.Check(findings, stage);
                break;
            default:
                findings.Add(stage, "is of an unknown kind");
                break;
        }
    }
}
