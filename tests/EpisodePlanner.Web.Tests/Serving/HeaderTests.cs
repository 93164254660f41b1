namespace EpisodePlanner.Web.Tests.Serving;

/// <summary>Expectations: the OWASP Secure Headers Project and Content Security Policy Level 3.</summary>
public sealed class HeaderTests(GuardedPlanner guarded) : IClassFixture<GuardedPlanner>
{
    [Theory]
    [InlineData("/problems", "localhost")]
    [InlineData("/nothing", "localhost")]
    [InlineData("/problems", "evil.example")]
    public async Task EveryAnswer_CarriesThem(string path, string host)
    {
        var planner = guarded.Planner;

        var answer = await planner.Get(path, ("Host", host));

        AssertGuarded(answer);
    }

    [Fact]
    public async Task Failure_CarriesThem() =>
        AssertGuarded(await guarded.AnswerOf(() => throw new InvalidOperationException("A failure of the test.")));

    private static void AssertGuarded(HttpResponseMessage answer)
    {
        Assert.Equal("nosniff", answer.Header("X-Content-Type-Options"));
        Assert.Equal("DENY", answer.Header("X-Frame-Options"));
        Assert.Equal("same-origin", answer.Header("Referrer-Policy"));
        Assert.Equal("same-origin", answer.Header("Cross-Origin-Resource-Policy"));
        Assert.Equal("same-origin", answer.Header("Cross-Origin-Opener-Policy"));
        Assert.NotNull(answer.Header("Permissions-Policy"));
        Assert.Null(answer.Header("Server"));
        var policy = answer.Header("Content-Security-Policy")!.Split("; ");
        Assert.Equal("default-src 'none'", policy[0]);
        Assert.Contains("frame-ancestors 'none'", policy);
        Assert.Contains("base-uri 'none'", policy);
        Assert.Contains("form-action 'self'", policy);
        Assert.DoesNotContain(policy, part => part.Contains("unsafe", StringComparison.Ordinal) || part.Contains('*', StringComparison.Ordinal));
    }

    [Fact]
    public async Task Endpoint_MayHaveAPolicyOfItsOwn()
    {
        var planner = guarded.Planner;

        Assert.Equal("default-src 'self'", (await planner.Get($"{GuardedPlanner.Path}-own")).Header("Content-Security-Policy"));
    }
}
