using Microsoft.Playwright;

namespace EpisodePlanner.Browser.Tests;

/// <summary>Logging work, undoing, and two people at once.</summary>
public sealed class WorkTests(Chromium chromium)
{
    [Fact]
    public async Task OneTap_LogsTheWorkAndCanBeUndone()
    {
        await using var site = await Site.Demo();
        await using var visit = await site.Visit(chromium);
        var before = (await site.Stored()).Log.Count;
        await visit.OpenDesk();
        await visit.Press("Begin now");

        Assert.Equal(before + 1, (await site.Stored()).Log.Count);
        Assert.True(await visit.Page.GetByRole(AriaRole.Heading, new() { Name = "Going on" }).IsVisibleAsync());
        Assert.True(await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Not yet" }).First.IsVisibleAsync());

        await visit.Press("Undo");

        Assert.Equal(before, (await site.Stored()).Log.Count);
        Assert.Empty(visit.Wrong);
    }

    [Fact]
    public async Task WorkThatTakesLonger_MovesTheUpload()
    {
        await using var site = await Site.Empty(new DateTimeOffset(2027, 5, 10, 7, 0, 0, TimeSpan.Zero));
        await site.BringIn("""
            { "format": 1, "name": "Shed", "zone": "Europe/Dublin",
              "series": [{ "id": "cart", "name": "Kite Cart", "work": ["cut tube, 3 h"] }],
              "slotRules": [{ "from": "2027-01-01", "at": "18:00", "rule": "FREQ=DAILY" }] }
            """u8.ToArray());
        await using var visit = await site.Visit(chromium);
        await visit.OpenDesk();
        var before = await visit.Heading();
        await visit.OpenDesk("/edit/tasks/cut-tube");
        await visit.Type("stages[0].hours", "30");
        await visit.Press("Save");
        await visit.Follow("Now");

        Assert.NotEqual(before, await visit.Heading());
    }

    [Fact]
    public async Task TwoBrowsers_TheSlowerIsShownBothAndChooses()
    {
        await using var site = await Site.Demo();
        await using var one = await site.Visit(chromium);
        await using var two = await site.Visit(chromium);
        var path = "/edit/people/" + (await site.Stored()).People.First().Id;
        await one.OpenDesk(path);
        await two.OpenDesk(path);
        await one.Type("name", "Quicker");
        await one.Press("Save");
        await two.Type("name", "Slower");
        await two.Press("Save");

        Assert.True(await two.Page.GetByText("Somebody else was quicker").IsVisibleAsync());
        var row = await two.Page.Locator("table tbody tr").First.InnerTextAsync();
        Assert.Contains("Quicker", row, StringComparison.Ordinal);
        Assert.Contains("Slower", row, StringComparison.Ordinal);
        Assert.Equal("Slower", await two.Field("name").InputValueAsync());
        Assert.Equal("Quicker", (await site.Stored()).People.First().Name);

        await two.Press("Save");

        Assert.Equal("Slower", (await site.Stored()).People.First().Name);
    }

    [Fact]
    public async Task ARefusedForm_ComesBackFilledInWithFocusOnWhatIsWrong()
    {
        await using var site = await Site.Demo();
        await using var visit = await site.Visit(chromium);
        await visit.OpenDesk("/edit/tasks/print-motor-bell");
        await visit.Type("name", "A name that stays");
        await visit.Type("stages[0].hours", "some");
        await visit.Press("Save");

        Assert.Equal("A name that stays", await visit.Field("name").InputValueAsync());
        Assert.Equal("some", await visit.Field("stages[0].hours").InputValueAsync());
        Assert.Equal("stages[0].hours", await visit.Page.EvaluateAsync<string>("document.activeElement.name"));
        Assert.Equal("true", await visit.Field("stages[0].hours").GetAttributeAsync("aria-invalid"));
    }

    [Fact]
    public async Task SomethingDeleted_TellsWhenAndIsBroughtBack()
    {
        await using var site = await Site.Empty(new DateTimeOffset(2027, 5, 10, 7, 0, 0, TimeSpan.Zero));
        await site.BringIn("""
            { "format": 1, "name": "Shed", "zone": "Europe/Dublin", "places": [{ "id": "yard", "name": "The yard", "kind": "outdoors" }] }
            """u8.ToArray());
        await using var visit = await site.Visit(chromium);
        await visit.OpenDesk("/edit/places/yard");
        await visit.Press("Delete this place");
        Assert.Empty((await site.Stored()).Places);
        await visit.OpenDesk("/edit/places/yard");

        Assert.Equal("This place was deleted", await visit.Heading());

        await visit.Press("Bring it back");

        Assert.Single((await site.Stored()).Places);
    }

    [Fact]
    public async Task AWorkshopDeleted_IsBroughtBack()
    {
        await using var site = await Site.Demo();
        await using var visit = await site.Visit(chromium);
        var address = $"{site.Address}/api/v1/workshops/{site.Workshop["/w/".Length..]}";
        await visit.Page.APIRequest.DeleteAsync(address, new() { Headers = new Dictionary<string, string> { ["If-Match"] = "*" } });
        await visit.OpenDesk();
        Assert.Equal("This workshop was deleted", await visit.Heading());

        await visit.Press("Bring it back");

        Assert.Equal("Friday 27 November, 17:00", await visit.Heading());
    }

    [Fact]
    public async Task ListsOfAForm_GrowAndShrinkWithoutLosingWhatWasTyped()
    {
        await using var site = await Site.Demo();
        await using var visit = await site.Visit(chromium, new() { JavaScriptEnabled = false });
        await visit.OpenDesk("/edit/tasks/print-motor-bell");
        var stages = await visit.Page.Locator("[name='stages.count']").GetAttributeAsync("value");
        await visit.Type("name", "Typed before");
        await visit.Press("One more: stage");

        Assert.Equal("Typed before", await visit.Field("name").InputValueAsync());
        Assert.NotEqual(stages, await visit.Page.Locator("[name='stages.count']").GetAttributeAsync("value"));
    }

    [Fact]
    public async Task OutlineAndLetter_AreReadAndTakenAlong()
    {
        await using var site = await Site.Demo();
        await using var visit = await site.Visit(chromium, new() { Permissions = ["clipboard-read", "clipboard-write"] });
        await visit.OpenDesk("/letter");
        Assert.True((await visit.Page.Locator("#written").InnerTextAsync()).Length > 200);
        await visit.Press("Copy as Markdown");
        await visit.Page.GetByText("Copied.").First.WaitForAsync();
        Assert.Equal(await visit.Page.Locator("#markdown").InputValueAsync(), await visit.Page.EvaluateAsync<string>("navigator.clipboard.readText()"));
        await visit.Press("Copy as formatted text");
        await visit.Page.WaitForFunctionAsync("navigator.clipboard.read().then(items => items[0].types.includes('text/html'))");
        await visit.OpenDesk("/story");
        await visit.Page.Locator("a[href*='/outline/']").First.ClickAsync();

        Assert.True((await visit.Page.Locator("#written").InnerTextAsync()).Length > 200);
        Assert.Empty(visit.Wrong);
    }
}
