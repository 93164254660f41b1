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
        builder.Logging.AddLogs(settings.LogAsJson);
        AddServices(builder.Services, settings, clock);

        var app = builder.Build();
        UseParts(app);
        Map(app);
        return app;
    }

    private static void AddServices(IServiceCollection services, ServerSettings settings, TimeProvider clock) => services
        .AddSingleton(clock)
        .Configure<HostOptions>(host => host.ShutdownTimeout = settings.StopAfter)
        .AddRouting()
        .AddProblems()
        .AddGuards(settings.Answers)
        .AddRequestTimes(settings.RequestTime)
        .AddFormTokens(settings);

    private static void UseParts(WebApplication app)
    {
        app.UseSecurityHeaders();
        app.UseProblems();
        app.UseRequestGuards();
        app.UseRouting();
        app.UseRequestTimeouts();
        app.UseFormGuard();
    }

    private static void Map(WebApplication app)
    {
        app.MapProblems();
    }
}
