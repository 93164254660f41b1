using EpisodePlanner.Databases;
using EpisodePlanner.Trials.Asking;
using EpisodePlanner.Trials.Editing;
using EpisodePlanner.Trials.Fuzzing;

namespace EpisodePlanner.Web.Tests.Trials;

/// <summary>Short runs of the trials; the long ones are entries of the benchmarks.</summary>
public abstract class TrialSuite(ITestDatabases databases)
{
    [Fact]
    public async Task Editors_InParallel_LoseNothingAndCloseNoCircle()
    {
        await using var database = await databases.New();
        await using var app = await BuiltApp.Start(database);

        var figures = await new EditorsTrial(Editors: 40, Rounds: 2).Run(new Api(app.Client, TestContext.Current.CancellationToken));

        Assert.Equal((40 * 2 * 2) + 20, figures.Changes);
        Assert.Equal(20, figures.CirclesRefused);
    }

    [Fact]
    public async Task BadRequests_AreRefusedWithProblems()
    {
        await using var database = await databases.New();
        await using var app = await BuiltApp.Start(database);

        var figures = await new FuzzTrial(Requests: 600, Seed: 3).Run(new Api(app.Client, TestContext.Current.CancellationToken));

        Assert.True(figures.Findings.Count == 0, $"{string.Join('\n', figures.Findings)}\n{app}");
    }
}

/// <summary>On a file.</summary>
public sealed class SqliteTrialTests(SqliteDatabases databases) : TrialSuite(databases);

/// <summary>On a server.</summary>
public sealed class PostgreSqlTrialTests(PostgreSqlDatabases databases) : TrialSuite(databases);
