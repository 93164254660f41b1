using EpisodePlanner.Web.Serving;

namespace EpisodePlanner.Web.Tests.Serving;

/// <summary>
/// Expectations: W3C Fetch Metadata and RFC 6454 for what the headers say; the OWASP cheat sheet on cross-site request
/// forgery for what is refused.
/// </summary>
public sealed class OriginTests(GuardedPlanner guarded) : IClassFixture<GuardedPlanner>
{
    public static TheoryData<string, string> Foreign => new()
    {
        { "Sec-Fetch-Site", "cross-site" },
        { "Sec-Fetch-Site", "same-site" },
        { "Sec-Fetch-Site", "Same-Origin" },
        { "Sec-Fetch-Site", "anything" },
        { "Origin", "null" },
        { "Origin", "https://evil.example" },
        { "Origin", "http://127.0.0.1" },
        { "Origin", "http://127.0.0.1:1" },
        { "Origin", "http://localhost:5080" },
        { "Origin", "http://shed.example.evil.example" },
        { "Origin", "file://" },
        { "Origin", "chrome-extension://shed.example" },
        { "Origin", "no origin" },
    };

    [Theory]
    [MemberData(nameof(Foreign))]
    public async Task Change_ForAnotherSite_IsRefused(string header, string value)
    {
        var planner = guarded.Planner;

        foreach (var method in (string[])["POST", "PUT", "PATCH", "DELETE", "FROB"])
        {
            var answer = await planner.Send(new HttpMethod(method), "/api/v1/test", null, (header, value));
            await answer.MustBe(ProblemTypes.RefusedOrigin);
        }
    }

    [Fact]
    public async Task Change_SaidTwice_IsRefused()
    {
        var planner = guarded.Planner;
        var own = planner.Address.GetLeftPart(UriPartial.Authority);

        var answer = await planner.Raw(
            $"POST /api/v1/test HTTP/1.1\r\nHost: {planner.Address.Authority}\r\nOrigin: {own}\r\nOrigin: {own}\r\nContent-Length: 0\r\nConnection: close\r\n\r\n");

        Assert.StartsWith("HTTP/1.1 403 ", answer, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Foreign))]
    public async Task Reading_ForAnotherSite_Passes(string header, string value)
    {
        var planner = guarded.Planner;

        foreach (var method in (HttpMethod[])[HttpMethod.Get, HttpMethod.Head, HttpMethod.Options])
        {
            Assert.Equal(200, (int)(await planner.Send(method, "/api/v1/test", null, (header, value))).StatusCode);
        }
    }

    [Fact]
    public async Task Change_ByAProgram_Passes()
    {
        var planner = guarded.Planner;

        Assert.Equal(200, (int)(await planner.Send(HttpMethod.Post, "/api/v1/test")).StatusCode);
    }

    [Theory]
    [InlineData("same-origin")]
    [InlineData("none")]
    public async Task Change_ByAPageOfOurs_Passes(string site)
    {
        var planner = guarded.Planner;
        var own = planner.Address.GetLeftPart(UriPartial.Authority);

        var answer = await planner.Send(HttpMethod.Put, "/api/v1/test", null, ("Sec-Fetch-Site", site), ("Origin", own));

        Assert.Equal(200, (int)answer.StatusCode);
    }

    [Theory]
    [InlineData("https://shed.example", "shed.example")]
    [InlineData("https://shed.example", "shed.example:443")]
    [InlineData("http://shed.example", "shed.example:80")]
    [InlineData("https://SHED.example:8443", "shed.example:8443")]
    [InlineData("http://[::1]:5080", "[::1]:5080")]
    public async Task Change_BehindAProxy_PassesByItsName(string origin, string host)
    {
        var planner = guarded.Planner;

        var answer = await planner.Send(HttpMethod.Post, "/api/v1/test", null, ("Origin", origin), ("Host", host));

        Assert.Equal(200, (int)answer.StatusCode);
    }

    [Theory]
    [InlineData("https://shed.example", "shed.example:80")]
    [InlineData("https://shed.example:444", "shed.example")]
    [InlineData("http://[::1]:5080", "127.0.0.1:5080")]
    public async Task Change_ByAnotherPort_IsRefused(string origin, string host)
    {
        var planner = guarded.Planner;

        var answer = await planner.Send(HttpMethod.Post, "/api/v1/test", null, ("Origin", origin), ("Host", host));

        await answer.MustBe(ProblemTypes.RefusedOrigin);
    }
}
