using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Checking;

/// <summary>Feasible schedules that nobody would want: every stage somewhere, in an order that the links allow.</summary>
public static class RandomSchedules
{
    /// <summary>A feasible schedule; stages for which no moment is left are unplaced.</summary>
    public static BenchSchedule Create(BenchProblem problem, ulong seed)
    {
        var dice = new Dice(seed);
        var hours = new ProblemHours(problem);
        var parts = new SchedulePart[]?[problem.Stages.Count];
        while (NextOf(problem, parts, dice) is { } stage)
        {
            var around = new Surroundings(problem, hours, parts, Relaxation.None);
            parts[stage] = IsBlocked(problem, parts, stage) ? [] : Somewhere(around, stage, dice);
        }

        return BenchSchedule.FromParts(problem, [.. parts.Select(p => p!)]);
    }

    private static int? NextOf(BenchProblem problem, SchedulePart[]?[] parts, Dice dice)
    {
        var ready = Enumerable.Range(0, parts.Length)
            .Where(i => parts[i] is null && Waited(problem, i).All(w => parts[w] is not null));
        var choice = ready.ToArray();
        return choice.Length == 0 ? null : dice.Pick(choice);
    }

    private static bool IsBlocked(BenchProblem problem, SchedulePart[]?[] parts, int stage) =>
        !problem.Stages[stage].Begun && Waited(problem, stage).Any(w => parts[w] is { Length: 0 });

    private static IEnumerable<int> Waited(BenchProblem problem, int stage)
    {
        var linked = problem.Links.Where(l => l.To == stage).Select(l => l.From);
        return problem.Stages[stage].GluedTo is var host and not -1 ? linked.Append(host) : linked;
    }

    private static SchedulePart[] Somewhere(Surroundings around, int stage, Dice dice)
    {
        var about = around.Problem.Stages[stage];
        if (Bounds.Of(around, stage) is not { Start: { } earliest, Finish: { } finish })
            return [];

        var mode = dice.Between(0, about.Modes.Count - 1);
        var from = Math.Max(0, earliest);
        var late = dice.Chance(50) ? 0 : dice.Between(0, around.Problem.Horizon / 4);
        var placer = Placer.Of(around, stage);
        return Enumerable.Range(from + late, Math.Max(0, around.Problem.Horizon - from - late + 1)).Prepend(from)
            .SelectMany(start => placer.At(start, mode, null))
            .FirstOrDefault(p => p[^1].End >= finish && p[^1].End <= around.Problem.Horizon
                && GreatestLags.Allow(around, stage, p)) ?? [];
    }
}
