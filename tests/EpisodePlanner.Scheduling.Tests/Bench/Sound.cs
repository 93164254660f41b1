using EpisodePlanner.Checking;

namespace EpisodePlanner.Scheduling.Tests.Bench;

/// <summary>Problems that are known to be sound, and schedules that are known to be feasible.</summary>
internal static class Sound
{
    public static BenchProblem Problem(BenchInput input) => BenchProblem.Create(input) switch
    {
        BenchProblemResult.Sound sound => sound.Problem,
        BenchProblemResult.Refused refused => throw new InvalidOperationException(string.Join(' ', refused.Reasons)),
        _ => throw new InvalidOperationException("Neither sound nor refused."),
    };

    /// <summary>The problem with some of its stages changed.</summary>
    public static BenchProblem With(BenchProblem problem, Func<int, BenchStage, BenchStage> change) =>
        Problem(InputOf(problem) with { Stages = [.. problem.Stages.Select((stage, i) => change(i, stage))] });

    /// <summary>The problem of one stage alone, with the wait glued to it, no link and no date.</summary>
    public static BenchProblem Alone(BenchProblem problem, int stage)
    {
        var waits = problem.Stages.Where(wait => wait.GluedTo == stage).Select(wait => wait with { GluedTo = 0 }).ToArray();
        return Problem(InputOf(problem) with
        {
            Stages = [problem.Stages[stage] with { NotBefore = 0 }, .. waits],
            Links = [.. waits.Select((_, i) => new BenchLink(0, i + 1, LinkKind.After))],
        });
    }

    /// <summary>The best schedule found, held against the checker.</summary>
    public static SearchResult Search(BenchProblem problem, int schedules = 1, ulong seed = 1, IReadOnlyList<int>? accepted = null) =>
        Checked(BenchSearch.Run(problem, new Makespan(), new SearchBudget(schedules, seed), accepted));

    /// <summary>A search's result, held against the checker.</summary>
    public static SearchResult Checked(SearchResult found)
    {
        var wrong = ScheduleChecker.Check(found.Schedule);
        Assert.True(wrong.Count == 0, string.Join(' ', wrong));
        return found;
    }

    public static BenchSchedule Schedule(BenchInput input, int schedules = 1) => Search(Problem(input), schedules).Schedule;

    public static BenchInput InputOf(BenchProblem problem) => new()
    {
        Horizon = problem.Horizon,
        Presence = problem.Presence,
        Stations = problem.Stations,
        Limits = problem.Limits,
        Stages = problem.Stages,
        Links = problem.Links,
    };
}
