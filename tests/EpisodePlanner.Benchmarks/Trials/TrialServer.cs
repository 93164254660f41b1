using EpisodePlanner.Databases;
using EpisodePlanner.Trials.Apps;

namespace EpisodePlanner.Benchmarks.Trials;

/// <summary>The server that was built beside this program, on a database of a trial's own.</summary>
internal static class TrialServer
{
    private static readonly string Program = Path.Combine(AppContext.BaseDirectory, "EpisodePlanner.Web.dll");

    /// <summary>Starts it.</summary>
    public static Task<RunningApp> Start(ITestDatabase database, CancellationToken stop) =>
        RunningApp.Start(Program, AppSettings.For(database), database.Folder, stop);

    /// <summary>Runs a trial on each database.</summary>
    /// <param name="most">When it is given up.</param>
    /// <param name="trial">The trial; tells whether all was well.</param>
    /// <returns>Whether all was well on both.</returns>
    public static async Task<bool> OnEach(TimeSpan most, Func<DatabaseKind, RunningApp, CancellationToken, Task<bool>> trial)
    {
        await using var postgreSql = new PostgreSqlDatabases { IsRequired = true };
        var isWell = true;
        foreach (var databases in new ITestDatabases[] { new SqliteDatabases(), postgreSql })
        {
            using var stop = new CancellationTokenSource(most);
            await using var database = await databases.New();
            await using var app = await Start(database, stop.Token);
            isWell &= await trial(databases.Kind, app, stop.Token);
        }

        return isWell;
    }
}
