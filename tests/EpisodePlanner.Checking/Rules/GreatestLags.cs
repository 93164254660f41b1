using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Checking;

/// <summary>
/// A link's later end comes at most its greatest lag after the earlier one. A lag out of or into what is going on binds
/// nothing: it can only be told that it is missed. A wait is going on where the work it is glued to is.
/// </summary>
internal static class GreatestLags
{
    public static bool Binds(BenchProblem problem, BenchLink link) =>
        link.AtMost is not null && !problem.Stages[link.To].Begun && !IsGoingOn(problem, link.From);

    /// <summary>Adds what is exceeded of the lags that bind, or of those that do not.</summary>
    public static void Check(Findings findings, bool binding)
    {
        foreach (var link in findings.Problem.Links)
        {
            if (link.AtMost is not { } most || Binds(findings.Problem, link) != binding
                || !findings.Schedule.IsPlaced(link.From) || !findings.Schedule.IsPlaced(link.To))
                continue;

            var (from, to) = LinkRules.Ends(findings.Schedule, link);
            if (to - from > most)
                findings.Add(link.To, $"{LinkRules.Verb(link.Kind)} {to - from} minutes after '{findings.Problem.Stages[link.From].Name}', more than {most}");
        }
    }

    /// <summary>Whether a stage so placed comes soon enough after the placed stages that lead to it.</summary>
    public static bool Allow(Surroundings around, int stage, SchedulePart[] parts) => around.Problem.Links
        .Where(link => link.To == stage && Binds(around.Problem, link))
        .All(link => around.Placed(link.From) is not { Length: > 0 } from
            || (LinkRules.ArrivesAtStart(link.Kind) ? parts[0].Start : parts[^1].End)
                - (LinkRules.LeavesFromStart(link.Kind) ? from[0].Start : from[^1].End) <= link.AtMost);

    private static bool IsGoingOn(BenchProblem problem, int stage) =>
        problem.Stages[stage].Begun || (problem.Stages[stage].GluedTo is var host and not -1 && problem.Stages[host].Begun);
}
