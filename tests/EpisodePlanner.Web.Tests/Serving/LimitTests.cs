using System.Net;
using EpisodePlanner.Web.Serving;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;

namespace EpisodePlanner.Web.Tests.Serving;

/// <summary>The limits are our own; the statuses are those of RFC 9110 and RFC 6585.</summary>
public sealed class LimitTests
{
    /// <summary>The server counts what frames the chunks too: some bytes for every few thousand.</summary>
    private const int FramesOfChunks = 32_768;

    private static void Read(WebApplication app)
    {
        app.MapPost("/api/v1/test", Length);
        app.MapPost("/api/v1/test/import", Length).TakesWorkshops();
        app.MapGet("/api/v1/test/slow", async (HttpContext context) => await Task.Delay(Timeout.Infinite, context.RequestAborted));
    }

    private static async Task<long> Length(HttpRequest request, CancellationToken stop)
    {
        var bytes = new MemoryStream();
        await request.Body.CopyToAsync(bytes, stop);
        return bytes.Length;
    }

    private static HttpContent Body(int bytes, bool isChunked) => isChunked
        ? new StreamContent(new Unseekable(new byte[bytes]))
        : new ByteArrayContent(new byte[bytes]);

    [Theory]
    [InlineData("/api/v1/test", BodyLimits.Usual, false)]
    [InlineData("/api/v1/test", BodyLimits.Usual, true)]
    [InlineData("/api/v1/test/import", BodyLimits.Import, false)]
    [InlineData("/api/v1/test/import", BodyLimits.Import, true)]
    public async Task Body_AtItsLimit_IsRead(string path, int limit, bool isChunked)
    {
        await using var planner = await RunningPlanner.Start(Read);
        var length = limit - (isChunked ? FramesOfChunks : 0);

        var answer = await planner.Send(HttpMethod.Post, path, Body(length, isChunked));

        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Equal($"{length}", await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
    }

    [Theory]
    [InlineData("/api/v1/test", BodyLimits.Usual, false)]
    [InlineData("/api/v1/test", BodyLimits.Usual, true)]
    [InlineData("/api/v1/test/import", BodyLimits.Import, false)]
    [InlineData("/api/v1/test/import", BodyLimits.Import, true)]
    public async Task Body_OneMore_IsTooLarge(string path, int limit, bool isChunked)
    {
        await using var planner = await RunningPlanner.Start(Read);

        // "Expect" lets the server answer before the body is on its way, as a careful client does.
        var answer = await planner.Send(HttpMethod.Post, path, Body(limit + 1, isChunked), ("Expect", "100-continue"));

        await answer.MustBe(ProblemTypes.TooLarge);
    }

    [Fact]
    public async Task Address_OneTooLong_IsRefused()
    {
        await using var planner = await RunningPlanner.Start();
        const string path = "/problems?x=";

        var longest = await planner.Get(path + new string('x', 4_096 - path.Length));
        var longer = await planner.Get(path + new string('x', 4_097 - path.Length));

        Assert.Equal(HttpStatusCode.OK, longest.StatusCode);
        await longer.MustBe(ProblemTypes.AddressTooLong);
    }

    [Fact]
    public async Task Address_NobodyWouldWrite_IsRefusedAtTheDoor()
    {
        await using var planner = await RunningPlanner.Start();

        var answer = await planner.Raw($"GET /{new string('x', 9_000)} HTTP/1.1\r\nHost: localhost\r\n\r\n");

        Assert.StartsWith("HTTP/1.1 414 ", answer, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(1, 20_000)]
    [InlineData(70, 1)]
    public async Task Headers_TooMany_AreRefusedAtTheDoor(int count, int length)
    {
        await using var planner = await RunningPlanner.Start();
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
        await using var planner = await RunningPlanner.Start(Read);

        var answer = await planner.Raw(request.Contains("Host\0", StringComparison.Ordinal) ? request : request + "\r\n\r\n");

        Assert.StartsWith("HTTP/1.1 400 ", answer, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", answer, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Request_ThatTakesTooLong_IsEnded()
    {
        await using var planner = await RunningPlanner.Start(Read, settings => settings with { RequestTime = TimeSpan.FromSeconds(1) });

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
