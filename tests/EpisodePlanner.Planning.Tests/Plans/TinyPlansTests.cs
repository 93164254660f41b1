using EpisodePlanner.Checking;
using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Planning.Tests.Plans;

/// <summary>Plans of tiny workshops against every schedule that there is, over the whole objective.</summary>
public sealed class TinyPlansTests
{
    private const int Workshops = 60;
    private const int MostLooks = 5_000;

    private static readonly long[] Hopeless = [long.MaxValue];

    [Fact]
    public void Make_TinyWorkshops_WeighWhatTheRulesSay()
    {
        for (var seed = 0; seed < Workshops; seed++)
        {
            var plan = Trial.Plan(TinyWorkshops.File(seed), TinyWorkshops.Now);

            Assert.Equal((seed, Row(plan)), (seed, string.Join(" ", Weights(plan))));
        }
    }

    [Fact]
    public void Make_TinyWorkshops_NeverBeatEverySchedule()
    {
        var (complete, equal) = (0, 0);
        for (var seed = 0; seed < Workshops; seed++)
        {
            var plan = Trial.Plan(TinyWorkshops.File(seed), TinyWorkshops.Now);
            if (Best(plan) is not { } best)
            {
                continue;
            }

            var compared = Weights(plan).AsSpan().SequenceCompareTo(best);
            Assert.True(compared >= 0, $"Seed {seed}: {Row(plan)} beats {string.Join(" ", best)}.");
            complete++;
            equal += compared == 0 ? 1 : 0;
        }

        TestContext.Current.TestOutputHelper?.WriteLine($"{equal} of {complete} plans are the best there is.");
        Assert.True(complete > Workshops / 2, $"Only {complete} searches were complete.");
    }

    /// <summary>The best of every schedule that ends at most two evenings after the plan's; null where there were too many.</summary>
    private static long[]? Best(Plan plan)
    {
        var squeezed = new Squeezed(plan.Schedule.Problem, plan.Schedule.End + (2 * 1440));
        var (objective, floor) = (new TinyObjective(plan), new TinyFloor(squeezed));
        long[] Weigh(BenchSchedule schedule) => objective.Of(Finishes(schedule, squeezed.RealFinish));
        var looked = 0;
        long[] Least(BenchSchedule schedule) => ++looked > MostLooks ? Hopeless : Bound(objective, floor, schedule);
        var found = ExhaustiveSearch.Best(squeezed.Problem, Weigh, Least);
        return looked <= MostLooks && found is { IsComplete: true, Unplaced: 0 } ? found.Best : null;
    }

    private static long[] Bound(TinyObjective objective, TinyFloor floor, BenchSchedule schedule)
    {
        var row = objective.Of(floor.Finishes(schedule));
        row[3] = Math.Max(row[3], floor.End);
        return row;
    }

    private static long[] Weights(Plan plan) => new TinyObjective(plan).Of(Finishes(plan.Schedule, finish => finish));

    private static int[] Finishes(BenchSchedule schedule, Func<int, int> real) =>
        [.. Enumerable.Range(0, schedule.Problem.Stages.Count).Select(s => schedule.IsPlaced(s) ? real(schedule.Finish(s)) : -1)];

    private static string Row(Plan plan) =>
        $"{plan.Weights.LateMinutes} {plan.Weights.Silence} {plan.Weights.Moves} {plan.Weights.EndMinute}";
}
