using EpisodePlanner.Browser.Tests;
using EpisodePlanner.Web.Tests.CommandLine;
using EpisodePlanner.Web.Tests.Deploy;

namespace EpisodePlanner.Web.Tests.Pages;

/// <summary>
/// Every page as it is sent. Oracle: html-validate with its preset for the HTML Living Standard and no rule off, fetched
/// by npm into a folder of its own.
/// </summary>
public sealed class HtmlTests
{
    private const string Validator = "html-validate@10.17.0";

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task EveryPage_OfTheDemo_IsValid()
    {
        await using var visit = await DeskVisit.To(await File.ReadAllBytesAsync(Papers.Demo, Stop));
        var outline = (await visit.Read("/story")).QuerySelector("a[href*='/outline/']")!.GetAttribute("href")!;
        string[] more = ["/silence?weeks=52", "/bench?days=7", "/new/series", "/new/machines", "/why/ferry-e8?soonest=true", outline[$"/w/{visit.Workshop}".Length..]];

        Assert.Equal("", await Problems(visit, EveryPage.All.Concat(more)));
    }

    [Fact]
    public async Task EveryPage_OfAnEmptyWorkshop_IsValid()
    {
        await using var visit = await DeskVisit.To("""{ "format": 1, "name": "Shed", "zone": "Europe/Dublin" }"""u8.ToArray());

        Assert.Equal("", await Problems(visit, EveryPage.All));
    }

    [Fact] // Without this, a validator that looks at nothing would please everybody.
    public async Task BrokenPage_IsFound() => Assert.Contains(
        "close-order",
        await Problems([("broken", "<!DOCTYPE html><html lang=\"en\"><body><p><div></p></body></html>")]),
        StringComparison.Ordinal);

    private static async Task<string> Problems(DeskVisit visit, IEnumerable<string> paths)
    {
        var pages = new List<(string Name, string Html)>();
        foreach (var path in paths.Select(path => $"/w/{visit.Workshop}{path}").Prepend("/").Prepend("/w/no-such-workshop"))
        {
            using var answer = await visit.Planner.Get(path, ("Accept", "text/html"));
            pages.Add(($"{pages.Count:00}{path.Replace('/', '-').Replace('?', '-')}", await answer.Content.ReadAsStringAsync(Stop)));
        }

        await visit.SendFile((await visit.Get("/")).Page, await File.ReadAllBytesAsync(Papers.FirstLines, Stop));
        pages.Add(("file", visit.Html));
        await visit.SendFile((await visit.Get("/")).Page, []);
        pages.Add(("no-file", visit.Html));
        return await Problems(pages);
    }

    private static async Task<string> Problems(IReadOnlyList<(string Name, string Html)> pages)
    {
        var program = await Program();
        var folder = Directory.CreateTempSubdirectory("html-");
        try
        {
            foreach (var (name, html) in pages)
            {
                await File.WriteAllTextAsync(Path.Combine(folder.FullName, $"{name}.html"), html, Stop);
            }

            var rules = Path.Combine(Papers.Root, "tests", "EpisodePlanner.Web.Tests", "Pages", "html-validate.json");
            var told = await Tool.Run(program, ["--config", rules, "--formatter", "text", .. pages.Select(page => Path.Combine(folder.FullName, $"{page.Name}.html"))]);
            return told.Code == 0 ? "" : told.Output + told.Error;
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static async Task<string> Program()
    {
        Tool.Need(Tool.Exists("npm"), "npm");
        var folder = Path.Combine(Path.GetTempPath(), "episode-planner-lint", Validator);
        Directory.CreateDirectory(folder);
        var program = Path.Combine(folder, "node_modules", ".bin", "html-validate");
        if (!File.Exists(program))
        {
            var fetched = await Tool.Run("npm", ["install", "--prefix", folder, "--no-audit", "--no-fund", Validator]);
            Tool.Need(fetched.Code == 0, Validator);
        }

        return program;
    }
}
