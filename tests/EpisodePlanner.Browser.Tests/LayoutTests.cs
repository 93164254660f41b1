using Microsoft.Playwright;

namespace EpisodePlanner.Browser.Tests;

/// <summary>Every page on small screens, at 200 % and without script.</summary>
public sealed class LayoutTests(Chromium chromium, DemoSite demo) : IClassFixture<DemoSite>
{
    [Theory] // WCAG 2.2, 1.4.10: no scrolling in two directions at a width of 320.
    [MemberData(nameof(EveryPage.Paths), MemberType = typeof(EveryPage))]
    public async Task EveryPage_FitsAWidthOf320(string path) => await Fits(path, 320, 700);

    [Theory] // WCAG 2.2, 1.4.4: at 200 % a window of 1280 has room for 640.
    [MemberData(nameof(EveryPage.Paths), MemberType = typeof(EveryPage))]
    public async Task EveryPage_FitsTwiceTheSize(string path) => await Fits(path, 640, 450);

    [Theory]
    [MemberData(nameof(EveryPage.Paths), MemberType = typeof(EveryPage))]
    public async Task EveryPage_WorksWithoutScript(string path)
    {
        await using var visit = await demo.Site.Visit(chromium, new() { JavaScriptEnabled = false });
        await visit.OpenDesk(path);

        Assert.NotEmpty(await visit.Heading());
        Assert.Equal(10, await visit.Page.Locator(".masthead nav a").CountAsync());
    }

    [Fact]
    public async Task Now_FitsOneSheetOfPaper()
    {
        await using var visit = await demo.Site.Visit(chromium);
        await visit.OpenDesk();
        var pdf = await visit.Page.PdfAsync(new() { Format = "A4" });

        Assert.Single(Sheets(pdf));
    }

    [Fact] // A common phone: 390 by 844.
    public async Task Now_FitsAPhoneScreenDownToTheFilming()
    {
        await using var visit = await demo.Site.Visit(chromium, Phone);
        await visit.OpenDesk();

        await FitsDownToTheFilming(visit);
    }

    [Fact]
    public async Task Now_WithWorkInHandAndCautions_FitsAPhoneScreenAndASheet()
    {
        await using var site = await Site.Empty(DemoSite.Evening, TimeSpan.FromMinutes(1));
        await site.BringIn(DemoSite.With("""{ "id": "in-hand", "at": "2026-11-25T17:30:00Z", "task": "upholster-bench", "stage": "1", "outcome": "begun" }"""));
        await using var visit = await site.Visit(chromium, Phone);
        await visit.OpenDesk();
        Assert.True(await visit.Page.GetByRole(AriaRole.Heading, new() { Name = "Going on", Exact = true }).IsVisibleAsync());
        Assert.NotEqual(0, await visit.Page.Locator(".caution").CountAsync());

        await FitsDownToTheFilming(visit);
        Assert.Single(Sheets(await visit.Page.PdfAsync(new() { Format = "A4" })));
    }

    private static BrowserNewContextOptions Phone => new() { ViewportSize = new ViewportSize { Width = 390, Height = 844 } };

    /// <summary>The upload, what is in hand, the next thing, tonight and the first shot to film end on the first screen.</summary>
    private static async Task FitsDownToTheFilming(Visit visit)
    {
        var filming = await visit.Page.Locator("section.answer", new() { HasText = "What must be filmed first" }).Locator("p").First.BoundingBoxAsync();

        Assert.True(filming!.Y + filming.Height <= 844, $"{filming.Y + filming.Height}");
    }

    private static System.Text.RegularExpressions.MatchCollection Sheets(byte[] pdf) =>
        System.Text.RegularExpressions.Regex.Matches(System.Text.Encoding.Latin1.GetString(pdf), "/Type */Page[^s]");

    private async Task Fits(string path, int width, int height)
    {
        await using var visit = await demo.Site.Visit(chromium, new() { ViewportSize = new ViewportSize { Width = width, Height = height } });
        await visit.OpenDesk(path);

        Assert.True(await visit.Page.EvaluateAsync<int>("document.documentElement.scrollWidth") <= width);
        Assert.Empty(visit.Wrong);
    }
}
