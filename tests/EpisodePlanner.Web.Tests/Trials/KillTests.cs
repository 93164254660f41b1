using EpisodePlanner.Databases;
using EpisodePlanner.Trials.Killing;

namespace EpisodePlanner.Web.Tests.Trials;

public sealed class KillTests(SqliteDatabases databases)
{
    [Fact]
    public async Task Killed_WhileWriting_KeepsWhatItAcknowledged()
    {
        await using var database = await databases.New();

        var figures = await new KillTrial(Times: 3, Writers: 3, Seed: 5)
            .Run(() => BuiltApp.Start(database), TestContext.Current.CancellationToken);

        Assert.True(figures.Acknowledged > 0);
        Assert.True(figures.Version > 1);
    }
}
