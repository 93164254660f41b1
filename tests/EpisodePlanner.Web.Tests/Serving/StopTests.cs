using Microsoft.AspNetCore.Builder;

namespace EpisodePlanner.Web.Tests.Serving;

public sealed class StopTests
{
    [Fact]
    public async Task Stop_WithARequestInFlight_FinishesIt()
    {
        var (began, goOn) = (new TaskCompletionSource(), new TaskCompletionSource());
        await using var planner = await RunningPlanner.Start(app => app.MapPost("/api/v1/test", async () =>
        {
            began.SetResult();
            await goOn.Task;
            return "finished";
        }));
        var stop = TestContext.Current.CancellationToken;

        var request = planner.Send(HttpMethod.Post, "/api/v1/test");
        await began.Task.WaitAsync(stop);
        var stopped = planner.App.StopAsync(stop);
        Assert.False(stopped.IsCompleted);
        await Assert.ThrowsAsync<HttpRequestException>(() => Knock(planner));
        goOn.SetResult();

        Assert.Equal("finished", await (await request).Content.ReadAsStringAsync(stop));
        await stopped;
    }

    [Fact]
    public async Task Stop_RequestThatNeverEnds_IsCutOff()
    {
        var began = new TaskCompletionSource();
        await using var planner = await RunningPlanner.Start(
            app => app.MapGet("/api/v1/test", async () =>
            {
                began.SetResult();
                await Task.Delay(Timeout.Infinite);
            }),
            settings => settings with { StopAfter = TimeSpan.Zero });
        var request = planner.Get("/api/v1/test");
        await began.Task.WaitAsync(TestContext.Current.CancellationToken);

        await planner.App.StopAsync(TestContext.Current.CancellationToken);

        await Assert.ThrowsAsync<HttpRequestException>(() => request);
    }

    /// <summary>A new connection, until none is taken any more.</summary>
    private static async Task Knock(RunningPlanner planner)
    {
        while (true)
        {
            using var client = new HttpClient { BaseAddress = planner.Address };
            await client.GetStringAsync("/problems", TestContext.Current.CancellationToken);
        }
    }
}
