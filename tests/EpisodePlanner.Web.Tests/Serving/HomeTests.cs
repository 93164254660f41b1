using System.Net;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using AngleSharp.Html.Parser;
using EpisodePlanner.Web.Serving;

namespace EpisodePlanner.Web.Tests.Serving;

/// <summary>The first page, as a browser without script uses it.</summary>
public sealed class HomeTests
{
    private static async Task<IHtmlDocument> Read(HttpResponseMessage answer) =>
        new HtmlParser().ParseDocument(await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));

    /// <summary>Fills in the form of the page and sends it, with what a browser sends along.</summary>
    private static async Task<HttpResponseMessage> Submit(RunningPlanner planner, string name, string zone, bool withToken = true, bool withCookie = true)
    {
        var opened = await planner.Get("/");
        var token = (await Read(opened)).QuerySelector<IHtmlInputElement>("input[name=_token]")!.Value;
        var cookie = opened.Header("Set-Cookie")!.Split(';')[0];
        var fields = new Dictionary<string, string> { ["name"] = name, ["zone"] = zone };
        if (withToken)
        {
            fields["_token"] = token;
        }

        return await planner.Send(
            HttpMethod.Post, "/", new FormUrlEncodedContent(fields),
            ("Cookie", withCookie ? cookie : "a=b"), ("Sec-Fetch-Site", "same-origin"), ("Accept", "text/html"));
    }

    [Fact]
    public async Task Page_WithoutWorkshops_SaysWhatToDo()
    {
        await using var planner = await RunningPlanner.Start();

        var page = await Read(await planner.Get("/"));

        Assert.Contains("There is no workshop yet.", page.Body!.TextContent, StringComparison.Ordinal);
        Assert.Equal("en", page.DocumentElement.GetAttribute("lang"));
        Assert.All(page.QuerySelectorAll("input:not([type=hidden])"), input => Assert.NotNull(page.QuerySelector($"label[for={input.Id}]")));
    }

    [Fact]
    public async Task Form_Sent_BeginsAWorkshop()
    {
        await using var planner = await RunningPlanner.Start();

        var sent = await Submit(planner, " Shed <b>& co</b> ", "Europe/Dublin");
        var page = await Read(await planner.Get(sent.Header("Location")!));

        Assert.Equal(HttpStatusCode.Redirect, sent.StatusCode);
        Assert.Contains("Shed <b>& co</b>", page.QuerySelector(".whose")!.TextContent, StringComparison.Ordinal);
        foreach (var link in page.QuerySelectorAll("a[href^='/']").Select(link => link.GetAttribute("href")!).Distinct())
        {
            Assert.True((int)(await planner.Get(link)).StatusCode < 400, link);
        }
    }

    [Fact]
    public async Task Form_WithErrors_ComesBackFilledInWithEachAtItsField()
    {
        await using var planner = await RunningPlanner.Start();

        var answer = await Submit(planner, "", "Europe/Dublim");
        var page = await Read(answer);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        var zone = page.QuerySelector<IHtmlInputElement>("input[name=zone]")!;
        Assert.Equal("Europe/Dublim", zone.Value);
        Assert.Equal("true", zone.GetAttribute("aria-invalid"));
        Assert.Contains("Europe/Dublin", page.GetElementById(zone.GetAttribute("aria-describedby")!)!.TextContent, StringComparison.Ordinal);
        Assert.Equal("true", page.QuerySelector("input[name=name]")!.GetAttribute("aria-invalid"));
    }

    [Theory]
    [InlineData(false, true)]
    [InlineData(true, false)]
    public async Task Form_WithoutTokenOrCookie_IsRefusedAsAPage(bool withToken, bool withCookie)
    {
        await using var planner = await RunningPlanner.Start();

        var answer = await Submit(planner, "Shed", "Europe/Dublin", withToken, withCookie);
        var page = await Read(answer);

        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.Equal(ProblemTypes.NoToken.Title, page.QuerySelector("h1")!.TextContent);
    }

    [Fact]
    public async Task Form_WithoutToken_IsAProblemForPrograms()
    {
        await using var planner = await RunningPlanner.Start();

        var answer = await planner.Send(HttpMethod.Post, "/", new FormUrlEncodedContent([new("name", "Shed")]));

        await answer.MustBe(ProblemTypes.NoToken);
    }

    [Fact]
    public async Task Cookie_IsForThisServersPagesAlone()
    {
        await using var planner = await RunningPlanner.Start();

        var cookie = (await planner.Get("/")).Header("Set-Cookie")!;

        Assert.Contains("samesite=strict", cookie, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("httponly", cookie, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public async Task Page_NamesNothingThatItsPolicyForbids()
    {
        await using var planner = await RunningPlanner.Start();

        foreach (var path in (string[])["/", "/problems", "/problems/stale"])
        {
            var page = await Read(await planner.Get(path));
            Assert.Empty(page.QuerySelectorAll("script:not([src]), style, [style], [onclick], [onload], base, iframe"));
            foreach (var file in page.QuerySelectorAll("link, script").Select(e => e.GetAttribute("href") ?? e.GetAttribute("src")!))
            {
                Assert.StartsWith("/", file, StringComparison.Ordinal);
                Assert.Equal(HttpStatusCode.OK, (await planner.Get(file)).StatusCode);
            }
        }
    }

    [Fact]
    public async Task MissingPage_IsAPageForABrowserAndAProblemForPrograms()
    {
        await using var planner = await RunningPlanner.Start();

        var page = await planner.Get("/nothing", ("Accept", "text/html,*/*;q=0.8"));
        var api = await planner.Get("/api/v1/nothing", ("Accept", "text/html,*/*;q=0.8"));

        Assert.Equal(HttpStatusCode.NotFound, page.StatusCode);
        Assert.Equal("text/html", page.Content.Headers.ContentType?.MediaType);
        await api.MustBe(ProblemTypes.NotFound);
    }
}
