using EpisodePlanner.Databases;

namespace EpisodePlanner.Trials.Apps;

/// <summary>The environment that a server of the tests is started with.</summary>
public static class AppSettings
{
    /// <summary>Where it keeps its database and its keys.</summary>
    public const string Data = "EPISODE_PLANNER_DATA";

    /// <summary>How it reaches a PostgreSQL.</summary>
    public const string PostgreSql = "EPISODE_PLANNER_POSTGRES";

    /// <summary>Where it listens.</summary>
    public const string Urls = "EPISODE_PLANNER_URLS";

    /// <summary>What makes it use a database of the tests.</summary>
    public static IReadOnlyDictionary<string, string> For(ITestDatabase database)
    {
        var settings = new Dictionary<string, string> { [Data] = database.Folder };
        if (database.Kind == DatabaseKind.PostgreSql)
        {
            settings[PostgreSql] = database.ConnectionString;
        }

        return settings;
    }
}
