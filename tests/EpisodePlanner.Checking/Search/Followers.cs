using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Checking;

/// <summary>The waits that are glued to a stage, and so move with it.</summary>
internal sealed class Followers
{
    private readonly Surroundings around;
    private readonly List<(BenchStage Wait, Bounds Bounds, Hours Free, Followers Next)> waits = [];

    public Followers(Surroundings around, int stage)
    {
        this.around = around;
        foreach (var wait in Of(around.Problem, stage))
        {
            var about = around.Problem.Stages[wait];
            var free = around.AllFree(about.Modes[0].Stations);
            waits.Add((about, Bounds.Of(around, wait), free, new Followers(around, wait)));
        }
    }

    /// <summary>A stage and everything glued to it, and to that.</summary>
    public static IReadOnlyList<int> Group(BenchProblem problem, int stage) =>
        [stage, .. Of(problem, stage).SelectMany(wait => Group(problem, wait))];

    /// <summary>Whether the waits are possible after a finish.</summary>
    public bool Fit(int finish) => waits.All(w =>
        w.Bounds.Start <= finish
        && around.WaitEnd(w.Wait, finish) is { } end
        && end <= around.Problem.Horizon
        && w.Bounds.Finish <= end
        && w.Free.HasAll(finish, end)
        && w.Next.Fit(end));

    /// <summary>The finishes at or just after which the waits can become possible.</summary>
    public IReadOnlyList<int> Finishes() => [.. waits.SelectMany(w => w.Free.Stretches.Select(s => s.Start)
        .Append(w.Bounds.Start ?? 0)
        .Concat(w.Next.Finishes().Append(w.Bounds.Finish ?? 0).Select(end => Before(w.Wait, end)))
        .Where(finish => finish >= 0 && finish <= around.Problem.Horizon))];

    private static IEnumerable<int> Of(BenchProblem problem, int stage) =>
        Enumerable.Range(0, problem.Stages.Count).Where(i => problem.Stages[i].GluedTo == stage);

    // The first start from which the wait lasts until a moment.
    private int Before(BenchStage wait, int end)
    {
        var (from, to) = (0, Math.Max(0, end));
        while (from < to)
        {
            var middle = from + ((to - from) / 2);
            if (around.WaitEnd(wait, middle) is { } at && at < end)
                from = middle + 1;
            else
                to = middle;
        }

        return to;
    }
}
