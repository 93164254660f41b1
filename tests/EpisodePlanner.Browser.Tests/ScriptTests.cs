namespace EpisodePlanner.Browser.Tests;

/// <summary>What script adds: keys, larger pictures, and pages that follow what is changed elsewhere.</summary>
public sealed class ScriptTests(Chromium chromium)
{
    [Fact]
    public async Task Digits_LeadToThePagesOfTheMenuUnlessSomethingIsTyped()
    {
        await using var site = await Site.Demo();
        await using var visit = await site.Visit(chromium);
        await visit.OpenDesk();
        await visit.Page.Keyboard.PressAsync("2");
        await visit.Page.WaitForURLAsync("**/bench");
        await visit.Page.Keyboard.PressAsync("0");
        await visit.Page.WaitForURLAsync("**/settings");
        await visit.OpenDesk("/series");
        await visit.Field("name").PressSequentiallyAsync("2");

        Assert.Equal("Series", await visit.Heading());
    }

    [Fact]
    public async Task Picture_GrowsByButtonAndByKeyAndShrinksAgain()
    {
        await using var site = await Site.Demo();
        await using var visit = await site.Visit(chromium);
        await visit.OpenDesk("/bench");
        var picture = visit.Page.Locator("figure.wide svg").First;
        var before = (await picture.BoundingBoxAsync())!.Width;
        await visit.Press("Larger");
        Assert.True((await picture.BoundingBoxAsync())!.Width > before * 1.4);
        await visit.Page.Locator("figure.wide .scroll").PressAsync("0");

        Assert.Equal(before, (await picture.BoundingBoxAsync())!.Width, 1.0);
        Assert.Empty(visit.Wrong);
    }

    [Fact]
    public async Task OpenPage_FollowsWhatIsChangedElsewhere()
    {
        await using var site = await Site.Demo();
        await using var visit = await site.Visit(chromium);
        await visit.Page.Clock.InstallAsync();
        await visit.OpenDesk();
        await visit.Page.WaitForResponseAsync("**/mark");
        await using var other = await site.Visit(chromium);
        await other.OpenDesk();
        await other.Press("Begin now");
        var begun = visit.Page.Locator("section.going p", new() { HasText = "print the pen turret" });
        Assert.Equal(0, await begun.CountAsync());
        await visit.Page.Clock.FastForwardAsync(20_000);

        await begun.WaitForAsync();
        Assert.Empty(visit.Wrong);
    }

    [Fact]
    public async Task TrialsThatTakeLong_AreShownWhenTheyAreKnown()
    {
        await using var site = await Site.Demo(TimeSpan.Zero);
        await using var plain = await site.Visit(chromium, new() { JavaScriptEnabled = false });
        await plain.OpenDesk();
        Assert.NotEqual(0, await plain.Page.GetByText("It is being tried out").CountAsync());
        await plain.Follow("Show it when it is known");
        Assert.Equal(1, await plain.Page.GetByText("What is assumed until then").CountAsync());

        await using var visit = await site.Visit(chromium);
        await visit.OpenDesk();
        await visit.Page.GetByText("What is assumed until then").WaitForAsync();
        Assert.Empty(visit.Wrong);
    }
}
