using System.Net;

namespace EpisodePlanner.Web.Tests.Pages;

/// <summary>What can be done about a silence, on pages. What is expected is our own contract.</summary>
public sealed class RemedyPageTests
{
    // Promised every day, uploaded in 2026 at last: silent too long whenever the test runs.
    private static Task<DeskVisit> Raft() => DeskVisit.To("""
        { "format": 1, "name": "Shed", "zone": "Europe/Dublin",
          "series": [{ "id": "raft", "name": "Raft", "promise": { "longestSilenceDays": 8 }, "work": ["floats, 40 h", "steers, 40 h"] }],
          "uploads": [{ "id": "u", "series": "raft", "date": "2026-11-01" }] }
        """u8.ToArray());

    [Fact]
    public async Task DoThis_MakesTheChangeAndCanBeUndone()
    {
        await using var visit = await Raft();

        var (status, page) = await visit.Press(await visit.Read("/silence/of/raft"), "Rest it");

        Assert.Equal(HttpStatusCode.OK, status);
        Assert.Equal(Planning.SeriesState.Resting, Assert.Single((await visit.Stored()).Series).State);
        await visit.Press(page, "Undo");
        Assert.Equal(Planning.SeriesState.Active, Assert.Single((await visit.Stored()).Series).State);
    }

    [Fact]
    public async Task DoThis_Twice_IsDoneOnce()
    {
        await using var visit = await Raft();
        var shown = await visit.Read("/silence/of/raft");
        await visit.Press(shown, "Rest it");
        var once = await visit.Stored();

        var (_, page) = await visit.Press(shown, "Rest it");

        Assert.Equal(once, await visit.Stored());
        Assert.StartsWith("Nothing was changed", page.QuerySelector("[role=status]")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task DoThis_OnAPageThatOthersHaveOvertaken_ChangesNothing()
    {
        await using var visit = await Raft();
        var shown = await visit.Read("/silence/of/raft");
        await visit.Press(await visit.Read("/edit/tasks/steers"), "Delete this task");

        var (_, page) = await visit.Press(shown, "Rest it");

        Assert.Equal(Planning.SeriesState.Active, Assert.Single((await visit.Stored()).Series).State);
        Assert.StartsWith("Nothing was changed", page.QuerySelector("[role=status]")!.TextContent, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/silence/channel", "What can be done: the channel")]
    [InlineData("/silence/of/nobody", "Silence")]
    public async Task Silence_OfChannelAndOfNobody_IsShown(string path, string heading)
    {
        await using var visit = await Raft();

        Assert.Equal(heading, (await visit.Get($"/w/{visit.Workshop}{path}")).Page.QuerySelector("h1")!.TextContent);
    }
}
