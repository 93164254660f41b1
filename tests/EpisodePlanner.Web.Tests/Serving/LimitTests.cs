using System.Net;
using EpisodePlanner.Web.Serving;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;

namespace EpisodePlanner.Web.Tests.Serving;

/// <summary>The limits are our own; the statuses are those of RFC 9110 and RFC 6585.</summary>
public sealed class LimitTests(GuardedPlanner guarded) : IClassFixture<GuardedPlanner>
{
    /// <summary>The server counts what frames the chunks too: some bytes for every few thousand.</summary>
    private const int FramesOfChunks = 32_768;

    private static void Slow(WebApplication app) => app.MapGet(
        "/api/v1/test/slow", async (HttpContext context) => await Task.Delay(Timeout.Infinite, context.RequestAborted));

    private static HttpContent Body(int bytes, bool isChunked) => isChunked
        ? new StreamContent(new Unseekable(new byte[bytes]))
        : new ByteArrayContent(new byte[bytes]);

    [Theory]
    [InlineData(GuardedPlanner.Path, BodyLimits.Usual, false)]
    [InlineData(GuardedPlanner.Path, BodyLimits.Usual, true)]
    [InlineData(GuardedPlanner.ImportPath, BodyLimits.Import, false)]
    [InlineData(GuardedPlanner.ImportPath, BodyLimits.Import, true)]
    public async Task Body_AtItsLimit_IsRead(string path, int limit, bool isChunked)
    {
        var planner = guarded.Planner;
        var length = limit - (isChunked ? FramesOfChunks : 0);

        var answer = await planner.Send(HttpMethod.Post, path, Body(length, isChunked));

        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Equal($"{length}", await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
    }

    [Theory]
    [InlineData(GuardedPlanner.Path, BodyLimits.Usual, false)]
    [InlineData(GuardedPlanner.Path, BodyLimits.Usual, true)]
    [InlineData(GuardedPlanner.ImportPath, BodyLimits.Import, false)]
    [InlineData(GuardedPlanner.ImportPath, BodyLimits.Import, true)]
    public async Task Body_OneMore_IsTooLarge(string path, int limit, bool isChunked)
    {
        var planner = guarded.Planner;

        // "Expect" lets the server answer before the body is on its way, as a careful client does.
        var answer = await planner.Send(HttpMethod.Post, path, Body(limit + 1, isChunked), ("Expect", "100-continue"));

        await answer.MustBe(ProblemTypes.TooLarge);
    }

    [Fact]
    public async Task Address_OneTooLong_IsRefused()
    {
        var planner = guarded.Planner;
        const string path = "/problems?x=";

        var longest = await planner.Get(path + new string('x', 4_096 - path.Length));
        var longer = await planner.Get(path + new string('x', 4_097 - path.Length));

        Assert.Equal(HttpStatusCode.OK, longest.StatusCode);
        await longer.MustBe(ProblemTypes.AddressTooLong);
    }

    [Fact]
    public async Task Address_NobodyWouldWrite_IsRefusedAtTheDoor()
    {
        var planner = guarded.Planner;

        var answer = await planner.Raw($"GET /{new string('x', 9_000)} HTTP/1.1\r\nHost: localhost\r\n\r\n");

        Assert.StartsWith("HTTP/1.1 414 ", answer, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(1, 20_000)]
    [InlineData(70, 1)]
    public async Task Headers_TooMany_AreRefusedAtTheDoor(int count, int length)
    {
        var planner = guarded.Planner;
        var headers = string.Concat(Enumerable.Range(0, count).Select(i => $"X-{i}: {new string('x', length)}\r\n"));

        var answer = await planner.Raw($"GET / HTTP/1.1\r\nHost: localhost\r\n{headers}\r\n");

        Assert.StartsWith("HTTP/1.1 431 ", answer, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("GET / HTTP/1.1\nHost")]
    [InlineData("NONSENSE\r\n\r\n")]
    [InlineData("GET /\0 HTTP/1.1\r\nHost: localhost\r\n\r\n")]
    [InlineData("GET / HTTP/1.1\r\nHost: local host\r\n\r\n")]
    [InlineData("POST /api/v1/test HTTP/1.1\r\nHost: localhost\r\nContent-Length: x\r\n\r\n")]
    [InlineData("POST /api/v1/test HTTP/1.1\r\nHost: localhost\r\nTransfer-Encoding: chunked\r\n\r\nZZ\r\n")]
    public async Task Request_NoSoundHttp_IsRefused(string request)
    {
        var planner = guarded.Planner;

        var answer = await planner.Raw(request + "\r\n\r\n");

        Assert.StartsWith("HTTP/1.1 400 ", answer, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", answer, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Request_ThatTakesTooLong_IsEnded()
    {
        await using var planner = await RunningPlanner.Start(Slow, settings => settings with { RequestTime = TimeSpan.FromSeconds(1) });

        var answer = await planner.Get("/api/v1/test/slow");

        await answer.MustBe(ProblemTypes.TooSlow);
        Assert.Equal("5", answer.Header("Retry-After"));
    }

    /// <summary>Bytes whose number nobody knows before they came.</summary>
    private sealed class Unseekable(byte[] bytes) : MemoryStream(bytes)
    {
        public override bool CanSeek => false;
    }
}
