using System.Net;
using System.Text.Json.Nodes;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using EpisodePlanner.Planning;

namespace EpisodePlanner.Web.Tests.Pages;

/// <summary>Supposing, resting and "could I publish now?" on pages. What is expected is our own contract.</summary>
public sealed class SupposePageTests
{
    private static Task<DeskVisit> Raft() => DeskVisit.To("""
        { "format": 1, "name": "Shed", "zone": "Europe/Dublin",
          "people": [{ "id": "me", "name": "Me", "hours": { "weekly": [{ "days": ["monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday"], "from": "18:00", "to": "22:00" }] } }],
          "series": [{ "id": "raft", "name": "Raft", "promise": { "longestSilenceDays": 8 }, "work": ["floats, 12 h", "steers, 40 h"] }],
          "uploads": [{ "id": "u", "series": "raft", "date": "2026-11-01" }] }
        """u8.ToArray());

    [Fact]
    public async Task SupposeIt_ShowsOnlyWhatDiffers_AndChangesNothing()
    {
        await using var visit = await Raft();
        var before = await visit.Stored();

        var (status, page) = await SupposeAway(visit, await visit.Read("/suppose"));

        Assert.Equal(HttpStatusCode.OK, status);
        var heads = page.QuerySelectorAll("table thead th").Select(head => head.TextContent).ToList();
        Assert.Equal(["What", "By the plan"], heads.Take(2));
        Assert.StartsWith("If Me is away from ", Assert.Single(heads.Skip(2)), StringComparison.Ordinal);
        Assert.Contains("Raft", page.QuerySelector("table tbody")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("later", page.QuerySelector("table tbody")!.TextContent, StringComparison.Ordinal);
        Assert.Equal(before, await visit.Stored());
    }

    [Fact]
    public async Task KeepIt_MakesItRealAndCanBeUndone()
    {
        await using var visit = await Raft();
        var before = await visit.Stored();
        var (_, page) = await SupposeAway(visit, await visit.Read("/suppose"));

        (_, page) = await visit.Press(page, ButtonOf(page, "Keep it"));

        Assert.Single(Assert.Single((await visit.Stored()).People).Hours!.Dated);
        Assert.Empty(page.QuerySelectorAll("table"));
        await visit.Press(page, "Undo");
        Assert.Equal(before, await visit.Stored());
    }

    [Fact]
    public async Task DropIt_LeavesNothing()
    {
        await using var visit = await Raft();
        var (_, page) = await SupposeAway(visit, await visit.Read("/suppose"));

        (_, page) = await visit.Press(page, ButtonOf(page, "Drop it"));

        Assert.Empty(page.QuerySelectorAll("table"));
        Assert.Empty(Assert.Single((await visit.Stored()).People).Hours!.Dated);
    }

    [Fact]
    public async Task DropIt_Twice_SaysThatNothingWasChanged()
    {
        await using var visit = await Raft();
        var (_, page) = await SupposeAway(visit, await visit.Read("/suppose"));
        await visit.Press(page, ButtonOf(page, "Drop it"));

        var (_, again) = await visit.Press(page, ButtonOf(page, "Drop it"));

        Assert.StartsWith("Nothing was changed", again.QuerySelector("[role=status]")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task KeepIt_WhereSomebodyChangedTheSame_AsksFirst()
    {
        await using var visit = await Raft();
        await SupposeAway(visit, await visit.Read("/suppose"));
        var form = await visit.Read("/edit/people/me");
        form.QuerySelector<IHtmlInputElement>("[name=name]")!.Value = "Myself";
        await visit.Press(form, "Save");

        var page = await visit.Read("/suppose");

        Assert.DoesNotContain(page.QuerySelectorAll("button"), button => button.TextContent.StartsWith("Keep it", StringComparison.Ordinal));
        Assert.Contains("Changed since it was supposed: person “Myself”", page.Body!.TextContent, StringComparison.Ordinal);
        (_, page) = await visit.Press(page, ButtonOf(page, "Suppose it anew"));
        await visit.Press(page, ButtonOf(page, "Keep it"));
        Assert.Equal("Me", Assert.Single((await visit.Stored()).People).Name);
    }

    [Fact]
    public async Task KeepIt_WhereSomebodyChangedSomethingElse_StillCan()
    {
        await using var visit = await Raft();
        await SupposeAway(visit, await visit.Read("/suppose"));
        await visit.Press(await visit.Read("/edit/tasks/steers"), "Delete this task");

        var page = await visit.Read("/suppose");
        await visit.Press(page, ButtonOf(page, "Keep it"));

        var stored = await visit.Stored();
        Assert.Single(Assert.Single(stored.People).Hours!.Dated);
        Assert.Single(stored.Tasks);
    }

    [Fact]
    public async Task SupposeIt_WithoutADay_ComesBackAsItWasTyped()
    {
        await using var visit = await Raft();
        var page = await visit.Read("/suppose");
        page.QuerySelector<IHtmlInputElement>("[name='away.from']")!.Value = "some day";
        page.QuerySelector<IHtmlInputElement>("[name='away.days']")!.Value = "7";

        var (status, again) = await visit.Press(page, "Suppose it: Somebody is away");

        Assert.Equal(HttpStatusCode.UnprocessableEntity, status);
        var day = again.QuerySelector<IHtmlInputElement>("[name='away.from']")!;
        Assert.Equal(("some day", "true"), (day.Value, day.GetAttribute("aria-invalid")));
        Assert.Equal("7", again.QuerySelector<IHtmlInputElement>("[name='away.days']")!.Value);
    }

    [Fact]
    public async Task SupposeIt_AChangeThatBreaksARule_SaysWhich()
    {
        await using var visit = await Raft();
        var page = await visit.Read("/suppose");
        page.QuerySelector<IHtmlTextAreaElement>("[name='other.change']")!.Value = """{ "kind": "series", "id": "raft", "remove": true }""";

        var (status, again) = await visit.Press(page, "Suppose it: Anything else");

        Assert.Equal(HttpStatusCode.UnprocessableEntity, status);
        Assert.NotEqual("", again.QuerySelector("#f-other-change-words .problem")!.TextContent);
        Assert.Single((await visit.Stored()).Series);
    }

    [Fact]
    public async Task Rest_LooksFirst_ThenRests()
    {
        await using var visit = await Raft();

        var page = await visit.Read("/series/raft/rest?until=2037-01-15");

        Assert.Contains("Raft rests openly until", page.Body!.TextContent, StringComparison.Ordinal);
        Assert.Equal(SeriesState.Active, Assert.Single((await visit.Stored()).Series).State);
        await visit.Press(page, "Rest it");
        Assert.Equal(SeriesState.Resting, Assert.Single((await visit.Stored()).Series).State);
    }

    [Fact]
    public async Task Finish_SaysWhatWillNotBeTold_AndCanBeUndone()
    {
        await using var visit = await Raft();

        var page = await visit.Read("/series/raft/rest?finish=yes");

        Assert.Contains("will not be told: “floats”, “steers”", page.Body!.TextContent, StringComparison.Ordinal);
        (_, page) = await visit.Press(page, "Finish it");
        Assert.Equal(SeriesState.Finished, Assert.Single((await visit.Stored()).Series).State);
        await visit.Press(page, "Undo");
        Assert.Equal(SeriesState.Active, Assert.Single((await visit.Stored()).Series).State);
    }

    [Fact]
    public async Task Rest_OnADayThatHasPassed_SaysSo()
    {
        await using var visit = await Raft();

        var (status, page) = await visit.Get($"/w/{visit.Workshop}/series/raft/rest?until=2020-01-01");

        Assert.Equal(HttpStatusCode.UnprocessableEntity, status);
        Assert.Equal("2020-01-01", page.QuerySelector<IHtmlInputElement>("[name=until]")!.Value);
    }

    [Fact]
    public async Task PublishNow_PlansTheEpisode()
    {
        await using var visit = await Raft();

        var page = await visit.Read("/story/now");

        Assert.Contains("from footage alone", page.Body!.TextContent, StringComparison.Ordinal);
        await visit.Press(page, "Plan this episode: Raft");
        Assert.Empty(Assert.Single((await visit.Stored()).Episodes).Milestones);
    }

    private static string ButtonOf(IHtmlDocument page, string begins) =>
        page.QuerySelectorAll("button").Select(button => button.TextContent.Trim()).First(text => text.StartsWith(begins, StringComparison.Ordinal));

    private static async Task<(HttpStatusCode Status, IHtmlDocument Page)> SupposeAway(DeskVisit visit, IHtmlDocument page)
    {
        await visit.Get($"/api/v1/workshops/{visit.Workshop}/plan?trials=false");
        var today = JsonNode.Parse(visit.Html)!["plannedAt"]!.GetValue<string>()[..10];
        page.QuerySelector<IHtmlSelectElement>("[name='away.person']")!.Value = "me";
        page.QuerySelector<IHtmlInputElement>("[name='away.from']")!.Value = today;
        page.QuerySelector<IHtmlInputElement>("[name='away.days']")!.Value = "7";
        return await visit.Press(page, "Suppose it: Somebody is away");
    }
}
