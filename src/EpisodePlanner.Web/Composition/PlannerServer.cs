using EpisodePlanner.Data;
using EpisodePlanner.Planning;
using EpisodePlanner.Proving.Publishing;
using EpisodePlanner.Web.Features;
using EpisodePlanner.Web.Features.Demo;
using EpisodePlanner.Web.Features.Home;
using EpisodePlanner.Web.Pages;
using EpisodePlanner.Web.Serving;

namespace EpisodePlanner.Web.Composition;

/// <summary>The server, put together.</summary>
public static class PlannerServer
{
    /// <summary>A server that is ready to be started; nothing but the arguments decides what it is.</summary>
    /// <param name="settings">How it runs.</param>
    /// <param name="clock">Tells it the time.</param>
    public static WebApplication Build(ServerSettings settings, TimeProvider clock)
    {
        var builder = WebApplication.CreateEmptyBuilder(new WebApplicationOptions
        {
            ApplicationName = typeof(PlannerServer).Assembly.GetName().Name,
            ContentRootPath = AppContext.BaseDirectory,
            EnvironmentName = Environments.Production,
        });
        builder.WebHost.ListenOn(settings);
        builder.WebHost.UseStaticWebAssets();
        builder.Logging.AddLogs(settings.LogAsJson);
        AddServing(builder.Services, settings);
        AddFeatures(builder.Services, settings, clock);

        var app = builder.Build();
        UseServing(app);
        MapFeatures(app);
        return app;
    }

    /// <summary>
    /// Waits until a server that was started has tried its database for the first time.
    /// </summary>
    /// <returns>What is wrong with the database; null where it is ready.</returns>
    public static Task<StorageTroubleException?> Prepared(WebApplication app) =>
        app.Services.GetRequiredService<Preparation>().FirstTry;

    private static void AddServing(IServiceCollection services, ServerSettings settings) => services
        .AddSingleton(settings)
        .Configure<HostOptions>(host => host.ShutdownTimeout = settings.StopAfter)
        .AddRouting()
        .AddProblems()
        .AddGuards(settings.Answers)
        .AddRequestTimes(settings.RequestTime)
        .AddFormTokens(settings)
        .AddCompression()
        .AddRazorComponents();

    private static void AddFeatures(IServiceCollection services, ServerSettings settings, TimeProvider clock) => services
        .AddSingleton(clock)
        .AddSingleton<IPlanProver, PlanProver>()
        .AddStores(settings)
        .AddPreparation()
        .AddSingleton<DemoWorkshop>()
        .AddApi()
        .AddHome()
        .AddDesk(settings.PatienceWithTrials);

    private static void UseServing(WebApplication app)
    {
        app.UseSecurityHeaders();
        app.UseProblems();
        app.UseRequestGuards();
        app.UseResponseCompression();
        app.UseStaticFiles();
        app.UseRouting();
        app.UseRequestTimeouts();
        app.UseFormGuard();
    }

    private static void MapFeatures(WebApplication app)
    {
        app.MapHealth();
        app.MapProblems();
        app.MapApi();
        app.MapHome();
        app.MapDesk();
    }
}
