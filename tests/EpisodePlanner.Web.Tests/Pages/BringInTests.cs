using System.Net;
using EpisodePlanner.Planning.Files;
using EpisodePlanner.Web.Tests.CommandLine;

namespace EpisodePlanner.Web.Tests.Pages;

/// <summary>A workshop file taken in from the first page: looked at, then whole or not at all.</summary>
public sealed class BringInTests
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    private static Task<DeskVisit> Begin() => DeskVisit.To("""{ "format": 1, "name": "Shed", "zone": "Europe/Dublin" }"""u8.ToArray());

    private static async Task<int> Count(DeskVisit visit) =>
        (await visit.Get("/")).Page.QuerySelectorAll("main section.sheet").Length;

    [Fact]
    public async Task File_IsShownFirstThenTakenInWhole()
    {
        await using var visit = await Begin();
        var file = await File.ReadAllBytesAsync(Papers.Demo, Stop);

        var (looked, preview) = await visit.SendFile((await visit.Get("/")).Page, file);

        Assert.Equal(HttpStatusCode.OK, looked);
        Assert.Equal(1, await Count(visit));
        var tasks = WorkshopFile.Read(file).Thing!.Tasks.Count;
        Assert.Contains($"Tasks: {tasks}", preview.QuerySelectorAll("li").Select(line => line.TextContent));
        Assert.Contains("The box of little wires", preview.Body!.TextContent, StringComparison.Ordinal);

        var (taken, now) = await visit.Press(preview, "Take it in");

        Assert.Equal(HttpStatusCode.OK, taken);
        Assert.Equal("Friday 27 November, 17:00", now.QuerySelector("h1")!.TextContent);
        var id = now.QuerySelector(".whose a:last-of-type")!.GetAttribute("href")!["/w/".Length..];
        Assert.Equal(file, await visit.Planner.Client.GetByteArrayAsync($"/api/v1/workshops/{id}/export", Stop));
    }

    [Fact]
    public async Task SentTwice_IsTakenInOnce()
    {
        await using var visit = await Begin();
        var (_, preview) = await visit.SendFile((await visit.Get("/")).Page, await File.ReadAllBytesAsync(Papers.FirstLines, Stop));

        await visit.Press(preview, "Take it in");
        await visit.Press(preview, "Take it in");

        Assert.Equal(2, await Count(visit));
    }

    [Theory]
    [InlineData("", "1 problem")]
    [InlineData("not json", "1 problem")]
    [InlineData("""{ "format": 1, "name": "", "zone": "Europe/Dublim", "people": [{ "nam": "x" }] }""", "several")]
    public async Task BadFile_IsToldInWordsAllAtOnceAndChangesNothing(string file, string many)
    {
        await using var visit = await Begin();

        var (status, page) = await visit.SendFile((await visit.Get("/")).Page, System.Text.Encoding.UTF8.GetBytes(file));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, status);
        var told = page.QuerySelectorAll("[role=alert] li").Length;
        Assert.True(many == "several" ? told >= 3 : told == 1, page.QuerySelector("[role=alert]")!.TextContent);
        Assert.Equal(1, await Count(visit));
        Assert.NotNull(page.QuerySelector("input[type=file]"));
    }
}
