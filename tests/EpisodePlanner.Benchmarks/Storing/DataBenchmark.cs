using System.Globalization;
using EpisodePlanner.Benchmarks.Measuring;
using EpisodePlanner.Benchmarks.Scale;
using EpisodePlanner.Data.PostgreSql;
using EpisodePlanner.Data.Sqlite;
using EpisodePlanner.Databases;

namespace EpisodePlanner.Benchmarks.Storing;

/// <summary>How long storing takes on both databases.</summary>
internal sealed class DataBenchmark : IBenchmark
{
    /// <summary>Goals for 1,000 tasks, milliseconds.</summary>
    private static readonly Dictionary<string, string> Goals = new()
    {
        ["loading it cold"] = "15",
        ["one change"] = "a few",
        ["a batch that changes every task"] = "500",
    };

    public string Name => "data";

    public string Usage => "data [--tasks 1000] [--seed 1]   time of loading and changing a stored workshop on both databases";

    public int Run(Options options, TextWriter page)
    {
        options.Only("--tasks", "--seed");
        var tasks = options.Number("--tasks", 1_000);
        RunAsync(tasks, options.Number("--seed", 1), page).GetAwaiter().GetResult();
        return 0;
    }

    private static async Task RunAsync(int tasks, int seed, TextWriter page)
    {
        await page.WriteLineAsync($"data, {tasks} tasks, seed {seed}: {Environment.ProcessorCount} cores; milliseconds, medians after warm-up");
        var workshop = GeneratedWorkshop.Make(tasks, seed);
        await using var sqlite = await new SqliteDatabases().New();
        await using var server = new PostgreSqlDatabases();
        await using var postgres = await server.New();
        var file = Path.Combine(sqlite.Folder, "episode-planner.db");
        StoreRun[] runs =
        [
            await StoreRun.Measure(() => new SqliteStorage(file), workshop),
            await StoreRun.Measure(() => new PostgreSqlStorage(postgres.ConnectionString), workshop),
        ];
        Tabulate(runs).Print(page);
    }

    private static Table Tabulate(StoreRun[] runs)
    {
        var table = new Table("step", "SQLite", "PostgreSQL", "goal");
        foreach (var step in runs[0].Times.Keys)
        {
            table.Add([step, .. runs.Select(run => Text(run.Times[step])), Goals.GetValueOrDefault(step, "")]);
        }

        return table;
    }

    private static string Text(TimeSpan time) => time.TotalMilliseconds.ToString("0.00", CultureInfo.InvariantCulture);
}
