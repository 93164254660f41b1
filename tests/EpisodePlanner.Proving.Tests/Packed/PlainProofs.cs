using EpisodePlanner.Checking;
using EpisodePlanner.Proving.Packed;
using EpisodePlanner.Scheduling;
using EpisodePlanner.Scheduling.Packed;

namespace EpisodePlanner.Proving.Tests.Packed;

/// <summary>Proofs of plain problems, begun from the engine's schedule; every schedule passes the checker.</summary>
internal static class PlainProofs
{
    public static PackedProof Of(PackedProblem problem, int schedules = 20, double work = 20) => Of(Known(problem, schedules), work);

    public static PackedProof Of(PackedSchedule known, double work) => Stopped(known, work, TestContext.Current.CancellationToken);

    public static PackedProof Stopped(PackedSchedule known, double work, CancellationToken stop)
    {
        var proof = PackedProver.Prove(known, ProofLimits.OfWork(work), stop: stop);
        Assert.Empty(PackedChecker.Check(proof.Schedule));
        Assert.InRange(proof.Bound, 0, proof.Schedule.End);
        Assert.InRange(proof.Schedule.End, 0, known.End);
        return proof;
    }

    public static PackedSchedule Known(PackedProblem problem, int schedules) =>
        PackedSearch.Run(problem, new Makespan(), new SearchBudget(schedules)).Schedule;

    /// <summary>Every activity after the other, in an order that the links allow: feasible and mostly bad.</summary>
    public static PackedSchedule OneByOne(PackedProblem problem)
    {
        var (starts, next) = (new int[problem.Count], 0);
        foreach (var activity in problem.Network.Order)
        {
            var after = problem.Network.Links.Where(link => link.To == activity)
                .Select(link => starts[link.From] + (int)problem.Network.Activities[link.From].Duration + (int)link.Lag);
            starts[activity] = after.Append(next).Max();
            next = starts[activity] + (int)problem.Network.Activities[activity].Duration;
        }

        return PackedSchedule.FromStarts(problem, starts);
    }

    public static PackedProblem WithMore(PackedProblem problem, int station) => PackedProblem.Create(new PackedInput
    {
        Network = problem.Network,
        Stations = [.. problem.Stations.Select((each, s) => s == station ? each with { Capacity = each.Capacity + 1 } : each)],
        Demands = [.. problem.Demands.Select(row => (IReadOnlyList<int>)row)],
    }) switch
    {
        PackedProblemResult.Sound sound => sound.Problem,
        _ => throw new InvalidOperationException("One unit more is refused."),
    };
}
