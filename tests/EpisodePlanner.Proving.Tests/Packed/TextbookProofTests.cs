using EpisodePlanner.Checking.Textbook;
using EpisodePlanner.Scheduling.Networks;
using EpisodePlanner.Scheduling.Packed;

namespace EpisodePlanner.Proving.Tests.Packed;

/// <summary>
/// Textbook networks in which every activity needs one of few hands. Source of the ends: computed outside the project,
/// proved optimal; 44 and 17 are published as the ends without limits.
/// </summary>
public sealed class TextbookProofTests
{
    [Theory]
    [InlineData("Reliable Construction Co.", 1, 79)] // computed
    [InlineData("Reliable Construction Co.", 2, 48)] // computed
    [InlineData("Reliable Construction Co.", 3, 44)] // computed
    [InlineData("Porta-Vac", 1, 32)] // computed
    [InlineData("Porta-Vac", 2, 19)] // computed
    [InlineData("Porta-Vac", 3, 17)] // computed
    public void Prove_FewHands_ReachesTheOptimum(string name, int hands, int optimum)
    {
        var problem = WithHands(TextbookNetworks.All.Single(network => network.Name == name), hands);

        var proof = PlainProofs.Of(PlainProofs.OneByOne(problem), work: 20);

        Assert.Equal((optimum, optimum), (proof.Bound, proof.Schedule.End));
        Assert.True(proof.IsOptimal);
    }

    private static PackedProblem WithHands(TextbookNetwork textbook, int hands)
    {
        var index = textbook.Activities.Select((activity, i) => (activity.Name, i)).ToDictionary(x => x.Name, x => x.i);
        Assert.True(ActivityNetwork.TryCreate(
            textbook.Activities.Select(activity => new NetworkActivity(activity.Name, activity.Duration)),
            textbook.Links.Select(link => new NetworkLink(index[link.From], index[link.To], link.Kind, link.Lag)),
            out var network,
            out _));
        return Assert.IsType<PackedProblemResult.Sound>(PackedProblem.Create(new PackedInput
        {
            Network = network,
            Stations = [new PackedStation("hands", hands)],
            Demands = [.. textbook.Activities.Select(_ => (int[])[1])],
        })).Problem;
    }
}
