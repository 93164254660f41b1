namespace EpisodePlanner.Planning.Tests.Plans;

/// <summary>Episodes that need no more of the build. Acceptance answers: the project's scenario 9.</summary>
public sealed class FirstAnswerCutsTests
{
    [Fact]
    public void Make_FromFootageThatExists_NeedsItsTailOnly()
    {
        // 16 h: the sixth evening, Thursday 27 May.
        var plan = Trial.Plan(FirstAnswerTests.File("""{ "id": "cut", "title": "What is filmed", "series": "kite" }"""), FirstAnswerTests.Now);

        Assert.Equal("2027-05-28T18:00", plan.Publish("cut"));
        Assert.Equal(25, plan.Outlook("kite").Forecast[0].Days);
    }

    [Theory]
    [InlineData(12, "2027-05-21T18:00")]
    [InlineData(16, "2027-05-28T18:00")]
    public void Make_EpisodeOfHours_HoldsUpToTwelve(int hours, string expected)
    {
        var cut = $$"""
            { "id": "cut", "title": "Short", "series": "kite", "tail": [{ "kind": "everything", "hours": {{hours}} }] }
            """;

        Assert.Equal(expected, Trial.Plan(FirstAnswerTests.File(cut), FirstAnswerTests.Now).Publish("cut"));
    }
}
