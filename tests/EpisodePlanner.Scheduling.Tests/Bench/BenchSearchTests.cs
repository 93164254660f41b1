using EpisodePlanner.Checking;
using EpisodePlanner.Scheduling.Causes;
using static EpisodePlanner.Scheduling.Tests.Bench.Evenings;

namespace EpisodePlanner.Scheduling.Tests.Bench;

/// <summary>Source: what a search promises; no outside numbers.</summary>
public sealed class BenchSearchTests
{
    private static readonly BenchInput Two = Input(Work("Sand", 60, Ann), Work("Draw", 60, Ann));

    [Fact]
    public void Run_SameSeed_GivesTheSameSchedule()
    {
        for (ulong seed = 1; seed <= 100; seed++)
        {
            var first = Sound.Search(RandomProblems.Create(seed), schedules: 30, seed: seed);
            var again = Sound.Search(RandomProblems.Create(seed), schedules: 30, seed: seed);
            Assert.Equal((first.Rule, first.Generated), (again.Rule, again.Generated));
            Assert.Equal(first.Row, again.Row);
            Assert.Equal(first.Schedule.Order, again.Schedule.Order);
            Assert.Equal(PartsOf(first.Schedule), PartsOf(again.Schedule));
        }
    }

    [Fact]
    public void Run_BudgetOfOne_MakesOneSchedule()
    {
        for (ulong seed = 1; seed <= 100; seed++)
        {
            Assert.Equal(1, Sound.Search(RandomProblems.WithoutGreatestLags(RandomProblems.Create(seed))).Generated);
        }
    }

    [Fact]
    public void Run_LargerBudget_IsNeverWorse()
    {
        for (ulong seed = 1; seed <= 100; seed++)
        {
            var problem = RandomProblems.Create(seed);
            var (one, more) = (Sound.Search(problem, 1 + (int)(seed % 6)), Sound.Search(problem, 40));
            Assert.True(more.Row.AsSpan().SequenceCompareTo(one.Row.AsSpan()) <= 0, $"Seed {seed}: worse than {one.Generated}.");
        }
    }

    [Fact]
    public void Run_StoppedBefore_StillGivesASchedule()
    {
        var stop = new CancellationToken(true);
        var found = Sound.Checked(BenchSearch.Run(Sound.Problem(Two), new Makespan(), new SearchBudget(50), stop: stop));
        Assert.Equal(1, found.Generated);
        Assert.Equal(2, found.Schedule.Order.Count);
    }

    [Fact]
    public void Run_StoppedMeanwhile_MakesNotOneScheduleMore()
    {
        using var stop = new CancellationTokenSource();
        var told = new List<double>();
        var shares = new Shares(share =>
        {
            told.Add(share);
            StopAt(stop, share > 0.05);
        });
        var six = Sound.Problem(Input([.. Enumerable.Range(1, 6).Select(i => Work($"Work {i}", 10 * i, Ann))]));
        var found = Sound.Checked(BenchSearch.Run(six, new Makespan(), new SearchBudget(40), progress: shares, stop: stop.Token));
        Assert.Equal(3, found.Generated);
        Assert.Equal([1 / 40.0, 2 / 40.0, 3 / 40.0], told);
    }

    [Fact]
    public void Run_StoppedAfterAnySchedule_GivesTheBestSoFar()
    {
        for (ulong seed = 1; seed <= 8; seed++)
        {
            var problem = RandomProblems.Create(seed);
            for (var k = 1; k <= 40; k++)
            {
                using var stop = new CancellationTokenSource();
                var shares = new Shares(share => StopAt(stop, share >= k / 40.0));
                var found = Sound.Checked(BenchSearch.Run(problem, new Makespan(), new SearchBudget(40), progress: shares, stop: stop.Token));
                Assert.True(found.Generated <= k + 200, $"Seed {seed}: {found.Generated} for {k}");
                Assert.Equal(Sound.Search(problem, found.Generated).Row, found.Row);
            }
        }
    }

    [Fact]
    public void Run_StoppedByAnotherThread_GivesASoundSchedule()
    {
        for (ulong seed = 1; seed <= 40; seed++)
        {
            using var stop = new CancellationTokenSource();
            using var begun = new ManualResetEventSlim();
            var stopper = new Thread(() =>
            {
                begun.Wait(TestContext.Current.CancellationToken);
                stop.Cancel();
            });
            stopper.Start();
            var shares = new Shares(_ => begun.Set());
            var found = Sound.Checked(BenchSearch.Run(
                RandomProblems.Create(seed), new Makespan(), new SearchBudget(int.MaxValue), progress: shares, stop: stop.Token));
            begun.Set();
            stopper.Join();
            Assert.True(found.Generated >= 1);
        }
    }

    [Fact]
    public void Run_LargerBudget_GoesOnWhereTheSmallerEnded()
    {
        for (ulong seed = 1; seed <= 30; seed++)
        {
            var problem = RandomProblems.Create(seed);
            var (few, many) = (new Rows(), new Rows());
            BenchSearch.Run(problem, few, new SearchBudget(150, seed), stop: TestContext.Current.CancellationToken);
            BenchSearch.Run(problem, many, new SearchBudget(700, seed), stop: TestContext.Current.CancellationToken);
            Assert.Equal(few.Seen, many.Seen.Take(few.Seen.Count));
        }
    }

    [Fact]
    public void Run_FewLists_EndsWhenAllWereTried()
    {
        // Two stages have two lists.
        var found = Sound.Search(Sound.Problem(Two), schedules: 10_000);
        Assert.InRange(found.Generated, 1, 2);
    }

    [Fact]
    public void Run_AfterWarmUp_AllocatesNothing()
    {
        // Enough stages that lists don't run out; between 2,000 and 4,000 schedules there is one population.
        var works = Enumerable.Range(0, 30).Select(i => Work($"Work {i}", 10 + i, i % 3 == 0 ? [Bob, Table] : [Ann]) with { Due = 500 * (i % 7) });
        var input = Input([.. works, .. Enumerable.Range(0, 6).Select(i => Print($"Print {i}", 60 + i).UnloadedBy(10, Ann))]);
        var problem = Sound.Problem(input with { Links = [.. Enumerable.Range(1, 29).Where(i => i % 2 == 0).Select(i => After(i - 1, i))] });
        var spy = new Bytes(after: 2_000);
        BenchSearch.Run(problem, spy, new SearchBudget(4_000), stop: TestContext.Current.CancellationToken);
        Assert.True(spy.Schedules > 500, $"{spy.Schedules}");
        Assert.Equal(0, spy.Allocating);
    }

    [Fact]
    public void Run_AcceptedOrder_IsTriedFirstAndKeptWhereNothingIsBetter()
    {
        var found = Sound.Search(Sound.Problem(Two), schedules: 50, accepted: [1, 0]);
        Assert.Equal("the accepted order", found.Rule);
        Assert.Equal((At(0, 19), At(0, 18)), (found.Schedule.Start(0), found.Schedule.Start(1)));
    }

    [Fact]
    public void Run_AcceptedOrderIsBeaten_TakesTheBetter()
    {
        var input = Input(Work("Sand", 60, Ann), Work("Glue", 60, Ann), Wait("Glue sets", 1200)) with { Links = [After(1, 2)] };
        var problem = Sound.Problem(input);
        Assert.Equal(At(0, 20) + 1200, Sound.Search(problem, accepted: [0, 1, 2]).Schedule.End);
        var found = Sound.Search(problem, schedules: 50, accepted: [0, 1, 2]);
        Assert.NotEqual("the accepted order", found.Rule);
        Assert.Equal(At(0, 19) + 1200, found.Schedule.End);
    }

    [Fact]
    public void Run_AcceptedOrderOfSome_PutsTheOthersBehind()
    {
        var input = Input(Work("Sand", 60, Ann), Work("Draw", 60, Ann), Work("Pack", 60, Ann));
        var schedule = Sound.Search(Sound.Problem(input), accepted: [2]).Schedule;
        Assert.Equal([At(0, 19), At(0, 20), At(0, 18)], Enumerable.Range(0, 3).Select(schedule.Start));
    }

    [Fact]
    public void Explain_AcceptedOrder_IsNamedAsTheCause()
    {
        var schedule = Sound.Search(Sound.Problem(Two), accepted: [1, 0]).Schedule;
        var expected = new Blocker(CauseKind.AcceptedOrder, Stage: 1, Station: Ann);
        var cause = new CauseFinder(schedule, [1, 0]).Explain(0);
        Assert.Equal((expected, 0), (cause.Cause, cause.CoBlockers.Count));
        Assert.Null(CauseChecker.Check(schedule, 0, cause));
        Assert.Equal(expected with { Kind = CauseKind.StationHeld }, new CauseFinder(schedule).Explain(0).Cause);
        Assert.Equal(expected with { Kind = CauseKind.StationHeld }, new CauseFinder(schedule, [0, 1]).Explain(0).Cause);
        Assert.Equal(CauseKind.ClosedHours, new CauseFinder(schedule, [1, 0]).Explain(1).Cause.Kind);
    }

    private static IEnumerable<string> PartsOf(BenchSchedule schedule) => Enumerable.Range(0, schedule.Problem.Stages.Count)
        .Select(stage => string.Join(' ', schedule.Parts(stage).ToArray()));

    private static void StopAt(CancellationTokenSource stop, bool now)
    {
        if (now)
        {
            stop.Cancel();
        }
    }

    /// <summary>Writes down every row.</summary>
    private sealed class Rows : IScheduleObjective
    {
        private readonly Makespan makespan = new();

        public List<string> Seen { get; } = [];

        public int Parts => makespan.Parts;

        public void Evaluate(ReadOnlySpan<int> starts, ReadOnlySpan<int> finishes, Span<long> row)
        {
            makespan.Evaluate(starts, finishes, row);
            Seen.Add($"{string.Join(' ', starts.ToArray())}: {row[0]} {row[1]}");
        }
    }

    /// <summary>Counts the schedules since whose predecessors the thread has allocated anything.</summary>
    private sealed class Bytes(int after) : IDeadlineObjective
    {
        private readonly Makespan makespan = new();
        private int seen;
        private long last;

        public int Schedules => seen - after;

        public int Allocating { get; private set; }

        public int Parts => makespan.Parts;

        public void Evaluate(ReadOnlySpan<int> starts, ReadOnlySpan<int> finishes, Span<long> row)
        {
            makespan.Evaluate(starts, finishes, row);
            var now = GC.GetAllocatedBytesForCurrentThread();
            Allocating += seen++ > after && now > last ? 1 : 0;
            last = now;
        }

        public void LatestFinishes(ReadOnlySpan<long> row, Span<int> latest) => makespan.LatestFinishes(row, latest);
    }

    private sealed class Shares(Action<double> told) : IProgress<double>
    {
        public void Report(double value) => told(value);
    }
}
