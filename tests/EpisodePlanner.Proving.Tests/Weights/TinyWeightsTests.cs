using EpisodePlanner.Checking;
using EpisodePlanner.Planning;
using EpisodePlanner.Planning.Tests.Plans;
using EpisodePlanner.Proving.Publishing;
using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Proving.Tests.Weights;

/// <summary>
/// The whole objective of tiny workshops: lateness, silences with what is ready held back, moves, end. Oracle: every
/// schedule that there is, weighed by the rules alone.
/// </summary>
public sealed class TinyWeightsTests
{
    private const int Workshops = 60;
    private const int MostLooks = 5_000;

    private static readonly long[] Hopeless = [long.MaxValue];

    [Fact]
    public void OfPlan_TinyWorkshops_AreNeverAboveTheBestSchedule()
    {
        var (complete, claimed, best) = (0, 0, 0);
        for (var seed = 0; seed < Workshops; seed++)
        {
            var plan = Trial.Plan(TinyWorkshops.File(seed), TinyWorkshops.Now);
            if (Best(plan) is not { } least
                || PlanProofs.OfPlan(plan, new PlanProver(), ProofLimits.OfWork(5), stop: TestContext.Current.CancellationToken) is not { } proof)
            {
                continue;
            }

            var known = plan.Weights.InOrder.ToArray();
            AssertBelow(seed, proof, known, least);
            complete++;
            claimed += proof.IsBest ? 1 : 0;
            best += known.SequenceEqual(least) ? 1 : 0;
        }

        TestContext.Current.TestOutputHelper?.WriteLine($"{complete} workshops: {best} plans are the best there is, {claimed} are proved so.");
        Assert.True(complete > Workshops / 2, $"Only {complete} searches were complete.");
        Assert.True(claimed * 2 >= complete, $"{claimed} of {complete} are claimed.");
    }

    /// <summary>A part's bound holds for all that is as good as the plan in the parts before.</summary>
    private static void AssertBelow(int seed, PlanProof proof, long[] known, long[] least)
    {
        for (var part = 0; part < proof.Parts.Count && known.AsSpan(0, part).SequenceEqual(least.AsSpan(0, part)); part++)
        {
            Assert.True(
                proof.Parts[part].Bound <= least[part],
                $"Seed {seed}: part {part} is bounded by {proof.Parts[part].Bound}, and {string.Join(' ', least)} can be reached.");
        }

        Assert.True(!proof.IsBest || known.SequenceEqual(least), $"Seed {seed}: {string.Join(' ', least)} beats what was claimed.");
    }

    /// <summary>The best of every schedule that ends at most two evenings after the plan's; null where there were too many.</summary>
    private static long[]? Best(Plan plan)
    {
        var squeezed = new Squeezed(plan.Schedule.Problem, plan.Schedule.End + (2 * 1440));
        var (objective, floor) = (new TinyObjective(plan), new TinyFloor(squeezed));
        var looked = 0;
        var found = ExhaustiveSearch.Best(
            squeezed.Problem,
            schedule => objective.Of(Finishes(schedule, squeezed.RealFinish)),
            schedule => ++looked > MostLooks ? Hopeless : Bound(objective, floor, schedule));
        return looked <= MostLooks && found is { IsComplete: true, Unplaced: 0 } ? found.Best : null;
    }

    private static long[] Bound(TinyObjective objective, TinyFloor floor, BenchSchedule schedule)
    {
        var row = objective.Of(floor.Finishes(schedule));
        row[3] = Math.Max(row[3], floor.End);
        return row;
    }

    private static int[] Finishes(BenchSchedule schedule, Func<int, int> real) =>
        [.. Enumerable.Range(0, schedule.Problem.Stages.Count).Select(s => schedule.IsPlaced(s) ? real(schedule.Finish(s)) : -1)];
}
