using EpisodePlanner.Databases;

namespace EpisodePlanner.Trials.Apps;

/// <summary>The environment that a server of the tests is started with.</summary>
public static class AppSettings
{
    private const string Prefix = "EPISODE_PLANNER_";

    /// <summary>Where it keeps its database and its keys.</summary>
    public const string Data = $"{Prefix}DATA";

    /// <summary>How it reaches a PostgreSQL.</summary>
    public const string PostgreSql = $"{Prefix}POSTGRES";

    /// <summary>Where it listens.</summary>
    public const string Urls = $"{Prefix}URLS";

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

    /// <summary>Makes an environment that of a server, free of the settings of whoever runs the tests.</summary>
    internal static void Take(
        IDictionary<string, string?> environment, IReadOnlyDictionary<string, string> settings, Uri address)
    {
        foreach (var name in environment.Keys.Where(name => name.StartsWith(Prefix, StringComparison.Ordinal)).ToList())
        {
            environment.Remove(name);
        }

        foreach (var (name, value) in settings.Append(new(Urls, address.GetLeftPart(UriPartial.Authority))))
        {
            environment[name] = value;
        }
    }
}
