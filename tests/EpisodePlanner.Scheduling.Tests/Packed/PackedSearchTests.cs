using EpisodePlanner.Checking;
using EpisodePlanner.Checking.Textbook;
using EpisodePlanner.Scheduling.Networks;
using EpisodePlanner.Scheduling.Packed;
using static EpisodePlanner.Scheduling.Tests.Packed.PlainProblems;

namespace EpisodePlanner.Scheduling.Tests.Packed;

/// <summary>Source: what the search promises, and brute force; outside numbers are named where they stand.</summary>
public sealed class PackedSearchTests
{
    [Fact]
    public void Run_TinyProblems_ReachesTheLeastEndAndNeverBeatsIt()
    {
        for (ulong seed = 1; seed <= 400; seed++)
        {
            var problem = RandomPlainProblems.Tiny(seed);
            Assert.Equal(PlainExhaustiveSearch.LeastEnd(problem), Search(problem, 200, seed).Schedule.End);
        }
    }

    [Theory]
    [InlineData("Reliable Construction Co.", 1, 79)] // computed, proved optimal with a general constraint solver
    [InlineData("Reliable Construction Co.", 2, 48)] // the same
    [InlineData("Reliable Construction Co.", 3, 44)] // the same; 44 is published as the end without limits
    [InlineData("Porta-Vac", 1, 32)] // the same
    [InlineData("Porta-Vac", 2, 19)] // the same
    [InlineData("Porta-Vac", 3, 17)] // the same; 17 is published as the end without limits
    public void Run_TextbooksWithFewHands_ReachesTheOptimum(string name, int hands, int optimum)
    {
        var textbook = TextbookNetworks.All.Single(network => network.Name == name);
        var names = textbook.Activities.Select(activity => activity.Name).ToList();
        var problem = Sound(OneStation(
            hands,
            [.. textbook.Activities.Select(activity => activity.Duration)],
            [.. textbook.Links.Select(l => new NetworkLink(names.IndexOf(l.From), names.IndexOf(l.To), l.Kind, l.Lag))]));
        Assert.Equal(optimum, Search(problem, 500).Schedule.End);
    }

    [Fact]
    public void Run_SameSeed_GivesTheSameSchedule()
    {
        for (ulong seed = 1; seed <= 100; seed++)
        {
            var first = Search(RandomPlainProblems.Create(seed), 150, seed);
            var again = Search(RandomPlainProblems.Create(seed), 150, seed);
            Assert.Equal(first.Generated, again.Generated);
            Assert.Equal(first.Row, again.Row);
            Assert.Equal(first.Schedule.Starts, again.Schedule.Starts);
        }
    }

    [Fact]
    public void Run_AnyBudget_IsUsedUpExactlyUnlessNothingCanBeBetter()
    {
        for (ulong seed = 1; seed <= 200; seed++)
        {
            var problem = RandomPlainProblems.Create(seed);
            var floor = NetworkTimes.Of(problem.Network).End;
            foreach (var budget in (int[])[1, 2, 3, 4, 17, 100])
            {
                var found = Search(problem, budget, seed);
                Assert.InRange(found.Generated, 1, budget);
                Assert.True(found.Generated == budget || found.Schedule.End == floor, $"Seed {seed}: {found.Generated} of {budget}.");
            }
        }
    }

    [Fact]
    public void Run_BudgetBelowOne_Throws() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Search(RandomPlainProblems.Create(1), 0));

    [Fact]
    public void Run_NothingToSchedule_EndsAtZero() => Assert.Equal(0, Search(Sound(OneStation(1, [])), 10).Schedule.End);

    [Fact]
    public void Run_StoppedBefore_StillGivesASchedule()
    {
        for (ulong seed = 1; seed <= 100; seed++)
        {
            Assert.Equal(1, Watched(RandomPlainProblems.Create(seed), int.MaxValue, null, new CancellationToken(true)).Generated);
        }
    }

    [Fact]
    public void Run_StoppedAtAnyMoment_GivesAValidSchedule()
    {
        for (var moment = 1; moment <= 60; moment++)
        {
            using var stop = new CancellationTokenSource();
            var count = 0;
            var progress = new Telling(_ =>
            {
                if (++count == moment)
                {
                    stop.Cancel();
                }
            });
            var found = Watched(Sound(OneStation(2, [3, 1, 4, 1, 5, 9, 2, 6])), 1000, progress, stop.Token);
            Assert.Equal(found.Generated, Math.Min(moment, count));
        }
    }

    [Fact]
    public void Run_Progress_GrowsToTheWholeBudget()
    {
        var told = new List<double>();
        Watched(Sound(OneStation(1, [3, 1, 4])), 200, new Telling(told.Add), CancellationToken.None);
        Assert.Equal(told.Order(), told);
        Assert.Equal(200, told.Count);
        Assert.Equal(1.0, told[^1]);
    }

    /// <summary>An objective of its own, without deadlines: the sum of finishes, then the end. Brute force by all lists.</summary>
    [Fact]
    public void Run_OtherObjective_IsMinimised()
    {
        for (ulong seed = 1; seed <= 100; seed++)
        {
            var problem = RandomPlainProblems.Tiny(seed);
            var found = Search(problem, 400, seed, new SumOfFinishes());
            Assert.Equal(found.Schedule.Finishes.Sum(), found.Row[0]);
            Assert.Equal(Lists(problem, []).Min(list => SumOf(problem, list)), found.Row[0]);
        }
    }

    /// <summary>More schedules may bring more allocation with them for larger populations, but none for each schedule.</summary>
    [Fact]
    public void Run_ManySchedules_AllocatesLessThanAByteForEach()
    {
        var problem = Sound(OneStation(2, [.. Enumerable.Range(0, 30).Select(i => 1L + (i * 7 % 9))]) with
        {
            Demands = [.. Enumerable.Range(0, 30).Select(i => (int[])[1 + (i % 2)])],
        });
        var before = GC.GetAllocatedBytesForCurrentThread();
        var found = Search(problem, 200_000, objective: new SumOfFinishes());
        Assert.Equal(200_000, found.Generated);
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 2_000_000);
    }

    private static long SumOf(PackedProblem problem, int[] list)
    {
        var generator = new PackedGenerator(problem);
        generator.Generate(list);
        return generator.ToSchedule().Finishes.Sum();
    }

    private static IEnumerable<int[]> Lists(PackedProblem problem, int[] begun) => begun.Length == problem.Count
        ? [begun]
        : Enumerable.Range(0, problem.Count)
            .Where(i => !begun.Contains(i) && problem.Network.Links.All(link => link.To != i || begun.Contains(link.From)))
            .SelectMany(i => Lists(problem, [.. begun, i]));

    private sealed class SumOfFinishes : IScheduleObjective
    {
        public int Parts => 2;

        public void Evaluate(ReadOnlySpan<int> starts, ReadOnlySpan<int> finishes, Span<long> row)
        {
            row.Clear();
            foreach (var finish in finishes)
            {
                (row[0], row[1]) = (row[0] + finish, Math.Max(row[1], finish));
            }
        }
    }

    private sealed class Telling(Action<double> told) : IProgress<double>
    {
        public void Report(double value) => told(value);
    }
}
