using System.Net;

namespace EpisodePlanner.Web.Tests.Pages;

/// <summary>Undoing from the page on which changes stand.</summary>
public sealed class HistoryPageTests
{
    private const string UndoLast = "Undo the last change";

    private static async Task<DeskVisit> Begun()
    {
        var visit = await DeskVisit.To("""
            { "format": 1, "name": "Shed", "zone": "Europe/Dublin",
              "places": [{ "id": "yard", "name": "The yard", "kind": "outdoors" }, { "id": "loft", "name": "The loft", "kind": "bench" }] }
            """u8.ToArray());
        await Delete(visit, "yard");
        return visit;
    }

    private static async Task Delete(DeskVisit visit, string place) =>
        await visit.Press(await visit.Read($"/edit/places/{place}"), "Delete this place");

    [Fact]
    public async Task UndoLast_TakesBackWhatThePageShows()
    {
        await using var visit = await Begun();

        var (status, _) = await visit.Press(await visit.Read("/changes"), UndoLast);

        Assert.Equal(HttpStatusCode.OK, status);
        Assert.Equal(2, (await visit.Stored()).Places.Count);
    }

    [Fact]
    public async Task UndoLast_OvertakenMeanwhile_UndoesNothingAndMarksWhatIsNew()
    {
        await using var visit = await Begun();
        var shown = await visit.Read("/changes");
        await Delete(visit, "loft");

        var (status, page) = await visit.Press(shown, UndoLast);

        Assert.Equal(HttpStatusCode.Conflict, status);
        Assert.Empty((await visit.Stored()).Places);
        Assert.Contains("nothing was undone", page.QuerySelector("[role=alert]")!.TextContent, StringComparison.Ordinal);
        var marked = page.QuerySelectorAll("tbody tr").Where(row => row.TextContent.Contains("New:", StringComparison.Ordinal)).ToList();
        Assert.Contains("loft", Assert.Single(marked).TextContent, StringComparison.Ordinal);

        // The page that says so knows the version it shows: the second try is no longer blind.
        await visit.Press(page, UndoLast);
        Assert.Equal("loft", Assert.Single((await visit.Stored()).Places).Id.ToString());
    }

    [Fact]
    public async Task UndoOfOneChange_StandsWhereOthersCameAfterIt()
    {
        await using var visit = await Begun();
        var shown = await visit.Read("/changes");
        await Delete(visit, "loft");

        await visit.Press(shown, shown.QuerySelector("tbody button")!.TextContent.Trim());

        Assert.Equal("yard", Assert.Single((await visit.Stored()).Places).Id.ToString());
    }

    [Fact]
    public async Task UndoWithoutSayingWhat_IsRefused()
    {
        await using var visit = await Begun();
        var shown = await visit.Read("/changes");
        shown.QuerySelector("[name=base]")!.Remove();

        var (status, _) = await visit.Press(shown, UndoLast);

        Assert.Equal(HttpStatusCode.BadRequest, status);
        Assert.Single((await visit.Stored()).Places);
    }
}
