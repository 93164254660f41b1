using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace EpisodePlanner.Browser.Tests;

/// <summary>Every page by WCAG 2.2 AA, as far as a program can judge it (axe-core), in both themes; and by keyboard.</summary>
public sealed class AccessTests(Chromium chromium, DemoSite demo) : IClassFixture<DemoSite>
{
    private static readonly AxeRunOptions Rules = new()
    {
        RunOnly = new RunOnlyOptions
        {
            Type = "tag",
            Values = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"],
        },
    };

    [Theory]
    [MemberData(nameof(EveryPage.Paths), MemberType = typeof(EveryPage))]
    public async Task EveryPage_HasNoViolationInEitherTheme(string path)
    {
        foreach (var theme in new[] { ColorScheme.Light, ColorScheme.Dark })
        {
            await using var visit = await demo.Site.Visit(chromium, new() { ColorScheme = theme });
            await visit.OpenDesk(path);
            var violations = (await visit.Page.RunAxe(Rules)).Violations;

            Assert.True(violations.Length == 0, $"{theme}: " + string.Join("\n", violations.Select(Words)));
            Assert.Empty(visit.Wrong);
        }
    }

    [Fact]
    public async Task FirstPage_AndAFileLookedAt_HaveNoViolation()
    {
        await using var visit = await demo.Site.Visit(chromium);
        await visit.Open("/");
        Assert.Empty((await visit.Page.RunAxe(Rules)).Violations.Select(Words));

        await visit.Page.Locator("input[type=file]").SetInputFilesAsync(Path.Combine(Site.Root, "demo-seed", "first-lines.json"));
        await visit.Press("Look at it first");
        Assert.StartsWith("Take in", await visit.Heading(), StringComparison.Ordinal);
        Assert.Empty((await visit.Page.RunAxe(Rules)).Violations.Select(Words));
        Assert.Empty(visit.Wrong);
    }

    [Fact]
    public async Task Keyboard_SkipsToTheContentAndReachesEveryPage()
    {
        await using var visit = await demo.Site.Visit(chromium);
        await visit.OpenDesk();
        await visit.Page.Keyboard.PressAsync("Tab");
        await visit.Page.Keyboard.PressAsync("Enter");
        Assert.Equal("content", await visit.Page.EvaluateAsync<string>("document.activeElement.id"));

        for (var page = 1; page <= 9; page++)
        {
            await visit.OpenDesk(page == 1 ? "/bench" : "");
            var link = visit.Page.Locator(".masthead nav a").Nth(page - 1);
            var href = await link.GetAttributeAsync("href");
            await link.PressAsync("Enter");
            await visit.Page.WaitForURLAsync(demo.Site.Address + href);
        }
    }

    [Fact]
    public async Task Keyboard_ReachesEveryBlockOfTheBench()
    {
        await using var visit = await demo.Site.Visit(chromium);
        await visit.OpenDesk("/bench");
        var block = visit.Page.Locator(".wide-only svg a").First;
        await block.PressAsync("Enter");
        await visit.Page.WaitForURLAsync("**/edit/**");

        Assert.NotEqual("Bench", await visit.Heading());
    }

    [Fact]
    public async Task ReducedMotion_StillsEverything()
    {
        await using var visit = await demo.Site.Visit(chromium, new() { ReducedMotion = ReducedMotion.Reduce });
        await visit.OpenDesk();

        Assert.Equal(0, await visit.Page.EvaluateAsync<int>("document.getAnimations().length"));
    }

    private static string Words(AxeResultItem violation) =>
        $"{violation.Id}: {violation.Help} ({string.Join("; ", violation.Nodes.Take(3).Select(node => node.Html))})";
}
