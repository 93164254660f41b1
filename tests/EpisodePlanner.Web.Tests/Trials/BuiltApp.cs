using EpisodePlanner.Databases;
using EpisodePlanner.Trials.Apps;

namespace EpisodePlanner.Web.Tests.Trials;

/// <summary>The server as it was built beside the tests, as a process of its own.</summary>
internal static class BuiltApp
{
    private static readonly string Program = Path.Combine(AppContext.BaseDirectory, "EpisodePlanner.Web.dll");

    /// <summary>Starts it and waits until it is ready.</summary>
    public static Task<RunningApp> Start(ITestDatabase database) => RunningApp.Start(
        Program, AppSettings.For(database), database.Folder, TestContext.Current.CancellationToken);

    /// <summary>Starts it before a door, which may be shut.</summary>
    public static RunningApp Launch(ITestDatabase database, Door door)
    {
        var settings = AppSettings.For(database).ToDictionary();
        settings[AppSettings.PostgreSql] = door.ConnectionString;
        return RunningApp.Launch(Program, settings, database.Folder);
    }
}
