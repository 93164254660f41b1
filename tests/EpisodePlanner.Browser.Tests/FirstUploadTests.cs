namespace EpisodePlanner.Browser.Tests;

/// <summary>From nothing to a first upload, by hand, with the least that must be typed.</summary>
public sealed class FirstUploadTests(Chromium chromium)
{
    /// <summary>Monday 10 May 2027, 08:00 in Dublin.</summary>
    private static readonly DateTimeOffset Monday = new(2027, 5, 10, 7, 0, 0, TimeSpan.Zero);

    [Fact] // scenarios.md 9: uncut, Friday 18 June.
    public async Task FromNothing_TheSameFactsGiveTheSameDate()
    {
        await using var site = await Site.Empty(Monday);
        await using var visit = await site.Visit(chromium);
        await Begin(visit);
        await SayHours(visit);
        await SaySlots(visit);
        await SayRanges(visit);
        await visit.Follow("Series");
        await visit.Type("name", "Gorse");
        await visit.Type("lines", "weld, 12 h\nwire, 8 h");
        await visit.Press("Begin it");
        await visit.Follow("Note an upload");
        await visit.Type("date", "2027-05-03");
        await visit.Press("Add");

        await visit.Follow("Now");

        Assert.Equal("Friday 18 June, 18:00", await visit.Heading());
        Assert.Empty(visit.Wrong);
    }

    [Fact]
    public async Task FromNothing_ANameAndAFewLinesGiveADate()
    {
        await using var site = await Site.Empty(Monday);
        await using var visit = await site.Visit(chromium);
        await Begin(visit);
        await visit.Type("name", "Kite Barrow");
        await visit.Type("lines", "cut tube, 3 h\nweld frame, 12 h\nwire, 8 h");
        await visit.Press("Begin it");
        await visit.Follow("Now");

        Assert.Matches("^(Friday) [0-9]+ [A-Z][a-z]+, 18:00$", await visit.Heading());
        Assert.True(await visit.Page.GetByText("One question").IsVisibleAsync());
    }

    [Fact]
    public async Task FromNothing_ALineThatIsNotUnderstoodIsAskedAboutAndNothingIsLost()
    {
        await using var site = await Site.Empty(Monday);
        await using var visit = await site.Visit(chromium);
        await Begin(visit);
        await visit.Type("name", "Kite Barrow");
        await visit.Type("lines", "cut tube, 3 h\nweld frame");
        await visit.Press("Begin it");

        Assert.Contains("weld frame", await visit.Page.Locator(".problem").First.InnerTextAsync(), StringComparison.Ordinal);
        Assert.Equal("cut tube, 3 h\nweld frame", await visit.Field("lines").InputValueAsync());
        Assert.Equal("Kite Barrow", await visit.Field("name").InputValueAsync());
        Assert.Equal("lines", await visit.Page.EvaluateAsync<string>("document.activeElement.name"));
    }

    private static async Task Begin(Visit visit)
    {
        await visit.Open("/");
        await visit.Type("name", "Gorse Shed");
        await visit.Type("zone", "Europe/Dublin");
        await visit.Press("Begin");
        Assert.Equal("Series", await visit.Heading());
    }

    private static async Task SayHours(Visit visit)
    {
        await visit.Follow("Stations");
        await visit.Follow("Add a person");
        await visit.Type("name", "Wim");
        await visit.Press("One more: weekly hours");
        await visit.Page.GetByLabel("tuesday").CheckAsync();
        await visit.Page.GetByLabel("thursday").CheckAsync();
        await visit.Type("hours.weekly[0].from", "19:00");
        await visit.Type("hours.weekly[0].to", "22:00");
        await visit.Press("Add");
    }

    private static async Task SaySlots(Visit visit)
    {
        await visit.Follow("Settings");
        await visit.Follow("Add a slot rule");
        Assert.Equal("FREQ=WEEKLY;BYDAY=FR", await visit.Field("rule").InputValueAsync());
        await visit.Type("at", "18:00");
        await visit.Press("Add");
    }

    private static async Task SayRanges(Visit visit)
    {
        await visit.Follow("Settings");
        await visit.Follow("Promises, tail, leads");
        await visit.Page.Locator("details.more > summary").First.ClickAsync();
        await visit.Type("rangeLow", "1");
        await visit.Type("rangeHigh", "1");
        await visit.Type("seriesPromiseDays", "21");
        await visit.Press("Save");
    }
}
