using EpisodePlanner.Databases;
using EpisodePlanner.Trials.Apps;

namespace EpisodePlanner.Web.Tests.Trials;

/// <summary>The server as it was built beside the tests, as a process of its own.</summary>
internal static class BuiltApp
{
    private static readonly string Program = Path.Combine(AppContext.BaseDirectory, "EpisodePlanner.Web.dll");

    public static Task<RunningApp> Start(ITestDatabase database) => RunningApp.Start(
        Program, AppSettings.For(database), database.Folder, TestContext.Current.CancellationToken);
}
