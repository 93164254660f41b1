using EpisodePlanner.Web.Serving;
using Microsoft.AspNetCore.Http;

namespace EpisodePlanner.Web.Tests.Serving;

/// <summary>Expectations: RFC 9110, 15.5.20 (421); what loopback is, RFC 6761 and RFC 5735; the rest our own rules.</summary>
public sealed class HostTests(GuardedPlanner guarded) : IClassFixture<GuardedPlanner>
{
    [Theory]
    [InlineData("evil.example")]
    [InlineData("evil.example:80")]
    [InlineData("127.0.0.1.evil.example")]
    [InlineData("localhost.evil.example")]
    [InlineData("192.168.1.4")]
    [InlineData("shed.example.evil.example")]
    [InlineData("notshed.example")]
    public async Task Server_UnknownName_IsRefused(string host)
    {
        var planner = guarded.Planner;

        var answer = await planner.Get("/problems", ("Host", host));

        await answer.MustBe(ProblemTypes.UnknownHost);
    }

    [Theory]
    [InlineData("localhost")]
    [InlineData("LOCALHOST:5080")]
    [InlineData("127.0.0.1")]
    [InlineData("127.1.2.3:1")]
    [InlineData("[::1]:5080")]
    [InlineData("shed.example")]
    [InlineData("Shed.Example:8443")]
    [InlineData("a.bench.example")]
    [InlineData("[fd00::7]")]
    public async Task Server_KnownName_Answers(string host)
    {
        var planner = guarded.Planner;

        var answer = await planner.Get("/problems", ("Host", host));

        Assert.Equal(200, (int)answer.StatusCode);
    }

    [Fact]
    public async Task Server_NoHost_IsRefusedByHttpItself()
    {
        var planner = guarded.Planner;

        Assert.StartsWith("HTTP/1.1 400 ", await planner.Raw("GET /problems HTTP/1.1\r\n\r\n"), StringComparison.Ordinal);
        Assert.StartsWith(
            "HTTP/1.1 421 ", await planner.Raw("GET /problems HTTP/1.1\r\nHost:\r\nConnection: close\r\n\r\n"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("bench.example", false)]
    [InlineData("a.bench.example", true)]
    [InlineData("a.b.bench.example", true)]
    [InlineData("abench.example", false)]
    public void HostNames_Pattern_StandsForNamesBelow(string host, bool included) =>
        Assert.Equal(included, new HostNames(["*.bench.example"]).Include(new HostString(host)));

    [Theory]
    [InlineData("planner.example", true)]
    [InlineData("*.planner.example", true)]
    [InlineData("10.0.0.4", true)]
    [InlineData("[fd00::1]", true)]
    [InlineData("*", false)]
    [InlineData("http://planner.example", false)]
    [InlineData("planner.example:80", false)]
    [InlineData("a b", false)]
    [InlineData("", false)]
    public void HostNames_IsPattern(string text, bool right) => Assert.Equal(right, HostNames.IsPattern(text));
}
