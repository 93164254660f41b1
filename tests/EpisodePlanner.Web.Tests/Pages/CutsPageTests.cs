using System.Net;

namespace EpisodePlanner.Web.Tests.Pages;

/// <summary>Taking, moving and pinning cuts on pages. What is expected is our own contract; what cuts win is held by Planning.Tests.</summary>
public sealed class CutsPageTests
{
    private static Task<DeskVisit> Raft() => DeskVisit.To("""
        { "format": 1, "name": "Shed", "zone": "Europe/Dublin",
          "series": [{ "id": "raft", "name": "Raft", "work": ["floats, 40 h", "steers, 40 h", "sails, 40 h"] }] }
        """u8.ToArray());

    [Fact]
    public async Task CutHere_IsTakenAndUndone()
    {
        await using var visit = await Raft();

        var (status, page) = await visit.Press(await visit.Read("/story/cuts/raft"), "Cut here");

        Assert.Equal(HttpStatusCode.OK, status);
        var cut = Assert.Single((await visit.Stored()).Episodes);
        Assert.Equal(["floats"], cut.Milestones.Select(milestone => $"{milestone}"));
        await visit.Press(page, "Undo");
        Assert.Empty((await visit.Stored()).Episodes);
    }

    [Fact]
    public async Task MoveHere_MovesTheCut()
    {
        await using var visit = await Raft();
        var (_, cut) = await visit.Press(await visit.Read("/story/cuts/raft"), "Cut here");

        await visit.Press(cut, "Move the cut here");

        Assert.Equal(["floats", "steers"], Assert.Single((await visit.Stored()).Episodes).Milestones.Select(milestone => $"{milestone}"));
    }

    [Fact]
    public async Task Pin_SettlesTheCutUntilItIsLetGo()
    {
        await using var visit = await Raft();
        var (_, cut) = await visit.Press(await visit.Read("/story/cuts/raft"), "Cut here");

        var (_, pinned) = await visit.Press(cut, "Pin its cut: floats");

        Assert.True(Assert.Single((await visit.Stored()).Episodes).CutPinned);
        Assert.Contains("its cut is pinned", pinned.QuerySelector("ol.places > li")!.TextContent, StringComparison.Ordinal);
        await visit.Press(pinned, "Let its cut go: floats");
        Assert.False(Assert.Single((await visit.Stored()).Episodes).CutPinned);
    }

    [Fact]
    public async Task CutHere_OnAPageThatOthersHaveOvertaken_ChangesNothingAndSaysSo()
    {
        await using var visit = await Raft();
        var shown = await visit.Read("/story/cuts/raft");
        await visit.Press(await visit.Read("/edit/tasks/sails"), "Delete this task");

        var (status, page) = await visit.Press(shown, "Cut here");

        Assert.Equal(HttpStatusCode.OK, status);
        Assert.Empty((await visit.Stored()).Episodes);
        Assert.StartsWith("Nothing was ", page.QuerySelector("[role=status]")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Together_CutsAllAtOnce()
    {
        await using var visit = await Raft();

        var page = await visit.Read("/story/cuts");
        await visit.Press(page, "Cut so");

        Assert.NotEmpty((await visit.Stored()).Episodes);
    }

    [Fact]
    public async Task Cuts_OfNoSuchSeries_LeadsToTheStories()
    {
        await using var visit = await Raft();

        var (_, page) = await visit.Get($"/w/{visit.Workshop}/story/cuts/nobody");

        Assert.Equal("Story", page.QuerySelector("h1")!.TextContent);
    }
}
