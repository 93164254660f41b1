using Microsoft.Playwright;

namespace EpisodePlanner.Browser.Tests;

/// <summary>What people paste, tap twice, or send too late.</summary>
public sealed class BadInputTests(Chromium chromium)
{
    private const string Script = "<script>window.broken = true</script><img src=x onerror=\"window.broken = true\">";

    [Theory]
    [InlineData(Script)]
    [InlineData("\u202Eright to left\u202C \u05D1\u05E0\u05D9\u05D9\u05D4 \u0628\u0646\u0627\u0621")]
    [InlineData("Donaudampfschifffahrtsgesellschaftskapitänsmützenabzeichenverordnungsentwurfsvorlagenfrage")]
    [InlineData("\U0001F6E0\uFE0F\U0001F469\u200D\U0001F527 weld \U0001F525")]
    public async Task AnyName_IsShownAsItIsOnEveryPage(string name)
    {
        await using var site = await Site.Empty(new DateTimeOffset(2027, 5, 10, 7, 0, 0, TimeSpan.Zero));
        await using var visit = await site.Visit(chromium, new() { ViewportSize = new ViewportSize { Width = 360, Height = 700 } });
        await visit.Open("/");
        await visit.Type("name", name);
        await visit.Type("zone", "Europe/Dublin");
        await visit.Press("Begin");
        await visit.Type("name", name);
        await visit.Type("lines", $"{name.Replace(",", "", StringComparison.Ordinal)}, 3 h");
        await visit.Press("Begin it");
        Assert.Equal(name, await visit.Heading());

        foreach (var page in new[] { "Now", "Bench", "Silence", "Story", "Series", "Stations", "Letter", "What changed", "Settings" })
        {
            await visit.Follow(page);
            Assert.Null(await visit.Page.EvaluateAsync<bool?>("window.broken ?? null"));
            Assert.True(await visit.Page.EvaluateAsync<int>("document.documentElement.scrollWidth") <= 360, page);
        }

        Assert.Empty(visit.Wrong);
    }

    [Theory]
    [InlineData("/edit/tasks/print-motor-bell")]
    [InlineData("/edit/series/ferry")]
    [InlineData("/settings/all")]
    public async Task AScriptInEveryField_RunsNowhereAndComesBackAsTyped(string path)
    {
        await using var site = await Site.Demo();
        await using var visit = await site.Visit(chromium);
        await visit.OpenDesk(path);
        const string Fields = "form.thing input:not([type=hidden]):not([type=checkbox]), form.thing textarea";
        await visit.Page.Locator("form.thing").EvaluateAsync(
            """
            (form, [fields, script]) => document.querySelectorAll(fields).forEach(field => { if (field.tagName === 'INPUT') field.type = 'text'; field.value = script; })
            """,
            new[] { Fields, Script });
        await visit.Press("Save");

        Assert.Null(await visit.Page.EvaluateAsync<bool?>("window.broken ?? null"));
        Assert.NotEqual(0, await visit.Page.Locator(".problem").CountAsync());
        var values = await visit.Page.Locator(Fields).EvaluateAllAsync<string[]>("fields => fields.map(field => field.value)");
        Assert.All(values, value => Assert.Equal(Script, value));
        Assert.Empty(visit.Wrong);
    }

    [Fact]
    public async Task AMegabytePasted_IsRefusedInWordsAndTheOldStays()
    {
        await using var site = await Site.Demo();
        await using var visit = await site.Visit(chromium);
        await visit.OpenDesk("/edit/tasks/print-motor-bell");
        await visit.Paste("note", new string('x', 1_000_000));
        await visit.Press("Save");

        Assert.Contains("4,000", await visit.Page.Locator(".problem").First.InnerTextAsync(), StringComparison.Ordinal);
        Assert.DoesNotContain((await site.Stored()).Tasks, task => task.Note?.Length > 4_000);
    }

    [Fact]
    public async Task SentTwice_IsSavedOnce()
    {
        await using var site = await Site.Demo();
        await using var visit = await site.Visit(chromium);
        var before = (await site.Stored()).People.Count;
        await visit.OpenDesk("/new/people");
        await visit.Type("name", "Once");
        await visit.Page.EvaluateAsync(
            """
            async () => {
              const form = document.querySelector('form.thing');
              const sent = () => fetch(form.action, { method: 'POST', body: new URLSearchParams(new FormData(form)) });
              await Promise.all([sent(), sent()]);
            }
            """);

        Assert.Equal(before + 1, (await site.Stored()).People.Count);
    }

    [Fact]
    public async Task BackAfterSaving_ShowsBothRatherThanOverwriting()
    {
        await using var site = await Site.Demo();
        await using var visit = await site.Visit(chromium, new() { JavaScriptEnabled = false });
        var path = "/edit/people/" + (await site.Stored()).People.First().Id;
        await visit.OpenDesk(path);
        await visit.Type("name", "First");
        await visit.Press("Save");
        var saved = visit.Page.Locator("[role=status]");
        await saved.WaitForAsync();
        await visit.Page.WaitForLoadStateAsync();
        await visit.Page.GoBackAsync();
        await visit.Type("name", "Second");
        await visit.Press("Save");

        // Whether the browser shows the form it kept or asks for it anew is its own choice.
        var overtaken = visit.Page.GetByText("Somebody else was quicker");
        await saved.Or(overtaken).First.WaitForAsync();
        var isOvertaken = await overtaken.IsVisibleAsync();
        Assert.Equal(isOvertaken ? "First" : "Second", (await site.Stored()).People.First().Name);
        Assert.True(!isOvertaken || await visit.Field("name").InputValueAsync() == "Second");
    }

    [Fact]
    public async Task AFormWithoutItsToken_IsRefusedInWords()
    {
        await using var site = await Site.Demo();
        await using var visit = await site.Visit(chromium);
        await visit.OpenDesk("/edit/tasks/print-motor-bell");
        await visit.Page.EvaluateAsync("document.querySelectorAll('[name=_token]').forEach(token => token.value = 'expired')");
        await visit.Type("name", "Not to be saved");
        var answer = await visit.Page.RunAndWaitForResponseAsync(() => visit.Press("Save"), response => response.Request.Method == "POST");

        Assert.Equal(400, answer.Status);
        Assert.DoesNotContain((await site.Stored()).Tasks, task => task.Name == "Not to be saved");
    }
}
