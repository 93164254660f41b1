using EpisodePlanner.Data.Writing;

namespace EpisodePlanner.Data.Tests;

public class GatesTests
{
    [Fact]
    public async Task Enter_LetsOneThroughAtATime()
    {
        var gates = new Gates();
        var (inside, most, done) = (0, 0, 0);

        await Task.WhenAll(Enumerable.Range(0, 100).Select(async _ =>
        {
            using var turn = await gates.Enter("a", StoreBench.Stop);
            most = Math.Max(most, ++inside);
            await Task.Yield();
            inside--;
            done++;
        }));

        Assert.Equal((1, 100), (most, done));
    }

    [Fact]
    public async Task Enter_ByAnotherName_DoesNotWait()
    {
        var gates = new Gates();
        using var turn = await gates.Enter("a", StoreBench.Stop);

        Assert.True(gates.Enter("b", StoreBench.Stop).IsCompletedSuccessfully);
    }

    [Fact]
    public async Task Enter_GivenUp_LeavesTheGateToTheOthers()
    {
        var gates = new Gates();
        using var patience = new CancellationTokenSource();
        var first = await gates.Enter("a", StoreBench.Stop);
        var second = gates.Enter("a", patience.Token);
        var third = gates.Enter("a", StoreBench.Stop);

        await patience.CancelAsync();
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => second);
        Assert.False(third.IsCompleted);
        first.Dispose();
        first.Dispose();

        (await third).Dispose();
        (await gates.Enter("a", StoreBench.Stop)).Dispose();
    }
}
