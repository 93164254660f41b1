using System.Net;
using EpisodePlanner.Trials.Asking;
using EpisodePlanner.Trials.Editing;
using EpisodePlanner.Trials.Fuzzing;

namespace EpisodePlanner.Web.Tests.Trials;

/// <summary>The trials find what they look for, in a server that does it.</summary>
public sealed class TrialsOfTrialsTests
{
    private static readonly EditorsTrial Editing = new(Editors: 20, Rounds: 3);

    [Fact]
    public async Task Editors_OfASoundServer_GetThrough()
    {
        using var server = new PretendServer();

        var figures = await Editing.Run(Asking(server));

        Assert.Equal((130, 10), (figures.Changes, figures.CirclesRefused));
    }

    [Fact]
    public async Task Editors_OfAServerThatOverwrites_FindLostCounts()
    {
        using var server = new PretendServer { OverwritesOthers = true };

        var found = await Assert.ThrowsAsync<TrialException>(() => Editing.Run(Asking(server)));
        Assert.Contains("was counted up 60 times", found.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Editors_OfAServerThatLetsCirclesIn_FindThem()
    {
        using var server = new PretendServer { LetsCirclesIn = true };

        var found = await Assert.ThrowsAsync<TrialException>(() => Editing.Run(Asking(server)));
        Assert.Contains("circle", found.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(HttpStatusCode.InternalServerError, "application/problem+json", "{}", "server error")]
    [InlineData(HttpStatusCode.NotFound, "text/html", "<p>no</p>", "no problem document")]
    [InlineData(HttpStatusCode.NotFound, "application/problem+json", "no", "no JSON")]
    [InlineData(HttpStatusCode.NotFound, "application/problem+json", """{ "type": "/problems/x", "title": "X", "status": 400 }""", "right status")]
    [InlineData(HttpStatusCode.NotFound, "application/problem+json", """{ "title": "System.InvalidOperationException" }""", "tells of the inside")]
    public async Task BadRequests_ToAServerThatAnswersWrongly_FindIt(HttpStatusCode status, string mediaType, string body, string finding)
    {
        using var server = new PretendServer { Otherwise = () => PretendServer.Answer(status, body, mediaType) };

        var figures = await new FuzzTrial(Requests: 3, Seed: 1).Run(Asking(server));

        Assert.Contains(finding, Assert.Single(figures.Findings), StringComparison.Ordinal);
    }

    private static Api Asking(PretendServer server) => new(server.Client(), TestContext.Current.CancellationToken);
}
