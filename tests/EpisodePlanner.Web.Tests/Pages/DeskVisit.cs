using System.Net;
using System.Text;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using AngleSharp.Html.Parser;
using EpisodePlanner.Planning;
using EpisodePlanner.Planning.Files;
using EpisodePlanner.Web.Composition;
using EpisodePlanner.Web.Tests.Serving;

namespace EpisodePlanner.Web.Tests.Pages;

/// <summary>The pages of one workshop on a server of its own, as a browser without script gets and sends them.</summary>
internal sealed class DeskVisit : IAsyncDisposable
{
    private static readonly HtmlParser Parser = new();
    private readonly HttpClient client;

    private DeskVisit(RunningPlanner planner, string workshop)
    {
        (Planner, Workshop) = (planner, workshop);
        client = new HttpClient(new SocketsHttpHandler { UseProxy = false }) { BaseAddress = planner.Address };
        client.DefaultRequestHeaders.Add("Sec-Fetch-Site", "same-origin");
        client.DefaultRequestHeaders.Add("Accept", "text/html");
    }

    public RunningPlanner Planner { get; }

    /// <summary>The workshop's id.</summary>
    public string Workshop { get; }

    /// <summary>The last page, as it was sent.</summary>
    public string Html { get; private set; } = "";

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    /// <summary>A server with the workshop of a file.</summary>
    public static async Task<DeskVisit> To(byte[] file, Func<ServerSettings, ServerSettings>? adjust = null)
    {
        var planner = await RunningPlanner.Start(adjust: adjust ?? (settings => settings with { PatienceWithTrials = TimeSpan.FromMinutes(1) }));
        var made = await planner.Send(HttpMethod.Post, "/api/v1/imports", Json(file));
        Assert.Equal(HttpStatusCode.Created, made.StatusCode);
        return new DeskVisit(planner, made.Header("Location")!.Split('/')[^1]);
    }

    /// <summary>A page of the workshop.</summary>
    public async Task<IHtmlDocument> Read(string path = "") => (await Get($"/w/{Workshop}{path}")).Page;

    /// <summary>A page of the server.</summary>
    public async Task<(HttpStatusCode Status, IHtmlDocument Page)> Get(string path) => await Read(await client.GetAsync(path, Stop));

    /// <summary>Sends the form of a button as it stands in a page, and follows where it leads.</summary>
    public async Task<(HttpStatusCode Status, IHtmlDocument Page)> Press(IHtmlDocument page, string button)
    {
        var pressed = page.QuerySelectorAll<IHtmlButtonElement>("button").First(one => one.TextContent.Trim() == button);
        var form = pressed.Form!;
        var fields = form.QuerySelectorAll<IHtmlInputElement>("input").Select(input => (input.Name!, input.Value))
            .Concat(form.QuerySelectorAll<IHtmlTextAreaElement>("textarea").Select(area => (area.Name!, area.Value)))
            .Concat(form.QuerySelectorAll<IHtmlSelectElement>("select").Select(select => (select.Name!, select.Value ?? "")))
            .Append((pressed.Name ?? "", pressed.Value))
            .Where(field => field.Item1.Length > 0);
        var address = pressed.GetAttribute("formaction") ?? form.GetAttribute("action")!;
        using var content = Content(form, fields);
        return await Read(await client.PostAsync(address, content, Stop));
    }

    /// <summary>Sends a file by a form that takes one.</summary>
    public async Task<(HttpStatusCode Status, IHtmlDocument Page)> SendFile(IHtmlDocument page, byte[] file)
    {
        var form = page.QuerySelector<IHtmlInputElement>("input[type=file]")!.Form!;
        using var content = new MultipartFormDataContent();
        content.Add(new StringContent(form.QuerySelector<IHtmlInputElement>("[name=_token]")!.Value), "_token");
        content.Add(new ByteArrayContent(file), "file", "workshop.json");
        return await Read(await client.PostAsync(form.GetAttribute("action"), content, Stop));
    }

    /// <summary>The workshop as it is stored.</summary>
    public async Task<Workshop> Stored() =>
        WorkshopFile.Read(await client.GetByteArrayAsync($"/api/v1/workshops/{Workshop}/export", Stop)).Thing!;

    public ValueTask DisposeAsync()
    {
        client.Dispose();
        return Planner.DisposeAsync();
    }

    private static HttpContent Content(IHtmlFormElement form, IEnumerable<(string Name, string Value)> fields)
    {
        if (form.GetAttribute("enctype") != "multipart/form-data")
        {
            return new FormUrlEncodedContent(fields.Select(field => KeyValuePair.Create(field.Name, field.Value)));
        }

        var content = new MultipartFormDataContent();
        foreach (var (name, value) in fields)
        {
            content.Add(new StringContent(value), name);
        }

        return content;
    }

    private async Task<(HttpStatusCode Status, IHtmlDocument Page)> Read(HttpResponseMessage answer)
    {
        Html = await answer.Content.ReadAsStringAsync(Stop);
        return (answer.StatusCode, Parser.ParseDocument(Html));
    }

    private static ByteArrayContent Json(byte[] file) =>
        new(file) { Headers = { ContentType = new("application/json") { CharSet = Encoding.UTF8.WebName } } };
}
