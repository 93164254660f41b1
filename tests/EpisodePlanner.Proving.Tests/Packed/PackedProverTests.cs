using EpisodePlanner.Checking;
using EpisodePlanner.Proving.Packed;
using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Proving.Tests.Packed;

public sealed class PackedProverTests
{
    private static IEnumerable<ulong> Seeds(int count) => Enumerable.Range(1, count).Select(i => (ulong)i);

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    // Oracle: brute force over every start of every activity.
    [Fact]
    public void Prove_TinyProblems_AgreesWithBruteForce() => Assert.All(Seeds(150), seed =>
    {
        var problem = RandomPlainProblems.Tiny(seed);

        var proof = PlainProofs.Of(PlainProofs.OneByOne(problem), work: 5);

        Assert.True(proof.IsOptimal);
        Assert.Equal(PlainExhaustiveSearch.LeastEnd(problem), proof.Bound);
    });

    // Property: whatever was feasible stays so with one unit more.
    [Fact]
    public void Prove_MoreCapacity_NeverWorsensTheOptimum() => Assert.All(Seeds(60), seed =>
    {
        var problem = RandomPlainProblems.Tiny(seed + 1000);
        var optimum = PlainProofs.Of(problem).Bound;

        for (var station = 0; station < problem.Stations.Length; station++)
        {
            var more = PlainProofs.Of(PlainProofs.WithMore(problem, station));
            Assert.True(more.IsOptimal);
            Assert.InRange(more.Bound, 0, optimum);
        }
    });

    // Property: no schedule is shorter than a bound, whoever found it.
    [Fact]
    public void Prove_LargerProblems_NeverExceedsAnySchedule() => Assert.All(Seeds(40), seed =>
    {
        var problem = RandomPlainProblems.Create(seed);

        var proof = PlainProofs.Of(PlainProofs.OneByOne(problem), work: 0.5);

        Assert.InRange(proof.Bound, 0, PlainProofs.Known(problem, 2000).End);
    });

    [Fact]
    public void Prove_Again_SaysTheSame()
    {
        var known = PlainProofs.Known(RandomPlainProblems.Create(7), 5);

        var (one, two) = (PlainProofs.Of(known, work: 0.05), PlainProofs.Of(known, work: 0.05));

        Assert.Equal(one.Schedule.Starts, two.Schedule.Starts);
        Assert.Equal(one.Bound, two.Bound);
    }

    [Fact]
    public void Prove_StoppedBefore_StillKnowsTheSchedule()
    {
        var known = PlainProofs.OneByOne(RandomPlainProblems.Create(3));

        var proof = PlainProofs.Stopped(known, work: 100, new CancellationToken(canceled: true));

        Assert.InRange(proof.Schedule.End, 1, known.End);
    }

    [Fact]
    public void Prove_WithProgress_TellsBoundsThatOnlyRise()
    {
        var told = new Told();

        var proof = PackedProver.Prove(PlainProofs.OneByOne(RandomPlainProblems.Create(5)), ProofLimits.OfWork(5), told, Stop);

        Assert.NotEmpty(told.Reports);
        Assert.Equal(told.Reports.Select(report => report.Bound).Order(), told.Reports.Select(report => report.Bound));
        Assert.All(told.Reports, report => Assert.InRange(report.Bound, 0, proof.Schedule.End));
    }

    private sealed class Told : IProgress<ProofProgress>
    {
        public List<ProofProgress> Reports { get; } = [];

        public void Report(ProofProgress value) => Reports.Add(value);
    }
}
