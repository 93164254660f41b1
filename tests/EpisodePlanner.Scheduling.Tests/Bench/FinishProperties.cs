using EpisodePlanner.Checking;

namespace EpisodePlanner.Scheduling.Tests.Bench;

/// <summary>
/// A stage that may start later never finishes earlier, minute by minute. Source: a property of the definitions; no
/// outside numbers.
/// </summary>
public sealed class FinishProperties
{
    [Fact]
    public void Finish_StageAlone_NeverDecreasesWithItsDate()
    {
        var seen = new HashSet<StageKind>();
        foreach (var problem in Problems(seeds: 15))
        {
            foreach (var stage in Enumerable.Range(0, problem.Stages.Count).Where(i => problem.Stages[i] is { GluedTo: -1, Begun: false }))
            {
                AssertNeverDecreases(Sound.Alone(problem, stage));
                seen.Add(problem.Stages[stage].Kind);
            }
        }

        Assert.Equal(3, seen.Count);
    }

    [Fact]
    public void Finish_BesideWorkGoingOn_NeverDecreasesWithItsDate()
    {
        var tried = 0;
        foreach (var problem in Problems(seeds: 90))
        {
            var begun = problem.Stages.Where(s => s.Begun).ToArray();
            foreach (var stage in begun.Length == 0 ? [] : problem.Stages.Where(s => s is { Begun: false, GluedTo: -1 }).Take(2))
            {
                var pair = Sound.InputOf(problem) with { Stages = [stage with { NotBefore = 0 }, .. begun], Links = [] };
                AssertNeverDecreases(Sound.Problem(pair));
                tried++;
            }
        }

        Assert.True(tried > 100);
    }

    private static IEnumerable<BenchProblem> Problems(ulong seeds)
    {
        for (ulong seed = 1; seed <= seeds; seed++)
        {
            yield return RandomProblems.Create(seed);
            yield return RandomProblems.Tiny(seed);
            yield return RandomProblems.Tiny(seed + seeds);
        }
    }

    /// <summary>Moves the first stage's date from 0 to where it can no more be done.</summary>
    private static void AssertNeverDecreases(BenchProblem problem)
    {
        var latest = -1;
        for (var date = 0; latest < int.MaxValue && date <= problem.Horizon; date++)
        {
            var moved = Sound.With(problem, (i, s) => i == 0 ? s with { NotBefore = date } : s);
            var schedule = Sound.Search(moved).Schedule;
            var finish = schedule.IsPlaced(0) ? schedule.Finish(0) : int.MaxValue;
            Assert.True(finish >= latest, $"{problem.Stages[0]} at {date}: {finish} after {latest}.");
            latest = finish;
        }
    }
}
