using EpisodePlanner.Data;
using EpisodePlanner.Planning;
using EpisodePlanner.Planning.Files;
using EpisodePlanner.Web.Composition;
using Microsoft.AspNetCore.Builder;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;

namespace EpisodePlanner.Browser.Tests;

/// <summary>The real server in this process, on a port and a data folder of its own, with a clock that the test sets.</summary>
internal sealed class Site : IAsyncDisposable
{
    private readonly WebApplication app;
    private readonly DirectoryInfo folder;

    private Site(WebApplication app, DirectoryInfo folder, SetClock clock) => (this.app, this.folder, Clock) = (app, folder, clock);

    public SetClock Clock { get; }

    public string Address => app.Urls.First();

    /// <summary>The path of the workshop that was brought in; empty where none was.</summary>
    public string Workshop { get; private set; } = "";

    public static string Root { get; } = FindRoot();

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    /// <summary>A site without any workshop.</summary>
    public static async Task<Site> Empty(DateTimeOffset now, TimeSpan? patience = null)
    {
        var (folder, clock) = (Directory.CreateTempSubdirectory("site-"), new SetClock { Now = now });
        var app = PlannerServer.Build(
            new ServerSettings { DataFolder = folder.FullName, Addresses = [new ListenAddress("127.0.0.1", 0)], PatienceWithTrials = patience ?? TimeSpan.FromMinutes(1) }, clock);
        await app.StartAsync(Stop);
        Assert.Null(await PlannerServer.Prepared(app));
        return new Site(app, folder, clock);
    }

    /// <summary>A site with the demo workshop, at the evening of its anchor.</summary>
    public static async Task<Site> Demo(TimeSpan? patience = null)
    {
        var site = await Empty(DemoSite.Evening, patience);
        await site.BringIn(File.ReadAllBytes(Path.Combine(Root, "demo-seed", "harbour-shed.json")));
        return site;
    }

    /// <summary>Brings a workshop in from a file.</summary>
    public async Task BringIn(byte[] file)
    {
        var read = WorkshopFile.Read(file);
        var store = app.Services.GetRequiredService<WorkshopStore>();
        var made = Assert.IsType<Made>(await store.Create(read.Thing!, "the test", null, Stop));
        Workshop = $"/w/{made.Now.Id}";
    }

    /// <summary>The workshop as it is stored.</summary>
    public async Task<Workshop> Stored()
    {
        var lookup = await app.Services.GetRequiredService<WorkshopStore>().Find(new Id(Workshop["/w/".Length..]), Stop);
        return lookup.Found!.Workshop;
    }

    /// <summary>A page in a browser context of its own; everything that goes wrong in it is gathered.</summary>
    public async Task<Visit> Visit(Chromium chromium, BrowserNewContextOptions? options = null)
    {
        var context = await chromium.Browser.NewContextAsync(options ?? new());
        context.SetDefaultTimeout(60_000);
        return new Visit(this, context, await context.NewPageAsync());
    }

    public async ValueTask DisposeAsync()
    {
        await app.StopAsync(CancellationToken.None);
        await app.DisposeAsync();
        folder.Delete(recursive: true);
    }

    private static string FindRoot()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder!.FullName, "EpisodePlanner.sln")))
        {
            folder = folder.Parent;
        }

        return folder.FullName;
    }
}

/// <summary>A clock that shows what a test sets.</summary>
internal sealed class SetClock : TimeProvider
{
    public DateTimeOffset Now { get; set; }

    public override DateTimeOffset GetUtcNow() => Now;
}
