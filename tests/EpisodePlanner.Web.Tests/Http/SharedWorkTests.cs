using EpisodePlanner.Web.Features.Plans;

namespace EpisodePlanner.Web.Tests.Http;

/// <summary>Work that many ask for at once. What is expected is our own contract; the work waits for the test, not for time.</summary>
public sealed class SharedWorkTests
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Get_ByTwoAtOnce_IsMadeOnce()
    {
        var (made, done) = (0, new TaskCompletionSource<int>());
        var work = new SharedWork<int>(_ =>
        {
            made++;
            return done.Task;
        });

        var both = new[] { work.Get(Stop), work.Get(Stop) };
        done.SetResult(7);

        var answers = await Task.WhenAll(both);
        Assert.Equal([7, 7], answers);
        Assert.Equal(7, await work.Get(Stop));
        Assert.Equal(1, made);
    }

    [Fact]
    public async Task Get_WhenOneOfTwoGoes_GoesOn()
    {
        var done = new TaskCompletionSource<int>();
        var work = new SharedWork<int>(stop => done.Task.WaitAsync(stop));
        using var one = CancellationTokenSource.CreateLinkedTokenSource(Stop);

        var (first, second) = (work.Get(one.Token), work.Get(Stop));
        await one.CancelAsync();
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => first);
        done.SetResult(7);

        Assert.Equal(7, await second);
    }

    [Fact]
    public async Task Get_WhenAllHaveGone_IsGivenUpAndMadeAnewForTheNext()
    {
        var (made, stopped) = (0, new TaskCompletionSource());
        var work = new SharedWork<int>(async stop =>
        {
            if (made++ > 0)
            {
                return 7;
            }

            await using var heard = stop.Register(stopped.SetResult);
            await stopped.Task;
            stop.ThrowIfCancellationRequested();
            return 0;
        });
        using var one = CancellationTokenSource.CreateLinkedTokenSource(Stop);

        var first = work.Get(one.Token);
        await one.CancelAsync();
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => first);
        await stopped.Task;

        Assert.Equal(7, await work.Get(Stop));
    }

    [Fact]
    public async Task Get_AfterAFailure_IsTriedAgain()
    {
        var made = 0;
        var work = new SharedWork<int>(_ => made++ == 0 ? throw new InvalidOperationException("once") : Task.FromResult(7));

        await Assert.ThrowsAsync<InvalidOperationException>(() => work.Get(Stop));

        Assert.Equal(7, await work.Get(Stop));
    }
}
