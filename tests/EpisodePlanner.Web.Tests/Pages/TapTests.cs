using System.Net;

namespace EpisodePlanner.Web.Tests.Pages;

/// <summary>Telling by one tap what became of work, on a page that others have overtaken. What is expected is our own contract.</summary>
public sealed class TapTests
{
    private static Task<DeskVisit> Begun() => DeskVisit.To("""
        { "format": 1, "name": "Shed", "zone": "Europe/Dublin",
          "series": [{ "id": "raft", "name": "Raft", "milestones": [{ "id": "floats", "name": "it floats" }] }],
          "tasks": [{ "id": "saw", "name": "saw", "milestone": "floats", "stages": [{ "id": "1", "hours": 2 }] }] }
        """u8.ToArray());

    [Fact]
    public async Task Done_IsLogged()
    {
        await using var visit = await Begun();

        var (status, _) = await visit.Press(await visit.Read(), "Done");

        Assert.Equal(HttpStatusCode.OK, status);
        Assert.Equal("saw", Assert.Single((await visit.Stored()).Log).Task.ToString());
    }

    [Fact]
    public async Task Done_OfWorkThatIsGone_LogsNothingAndSaysSo()
    {
        await using var visit = await Begun();
        var shown = await visit.Read();
        await visit.Press(await visit.Read("/edit/tasks/saw"), "Delete this task");

        var (status, page) = await visit.Press(shown, "Done");

        Assert.Equal(HttpStatusCode.OK, status);
        Assert.Empty((await visit.Stored()).Log);
        Assert.StartsWith("Nothing was changed", page.QuerySelector("[role=status]")!.TextContent, StringComparison.Ordinal);
    }
}
