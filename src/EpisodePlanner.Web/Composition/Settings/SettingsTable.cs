using EpisodePlanner.Planning;

namespace EpisodePlanner.Web.Composition;

/// <summary>One setting of the server.</summary>
/// <param name="Name">The environment variable.</param>
/// <param name="Default">What holds where it is not set, in words.</param>
/// <param name="Meaning">What it says, and what may stand there.</param>
public sealed record Setting(string Name, string Default, string Meaning);

/// <summary>Every setting of the server; the tables that people read are held against it by a test.</summary>
public static class SettingsTable
{
    /// <summary>What the name of every setting begins with.</summary>
    public const string Prefix = "EPISODE_PLANNER_";

    /// <summary>The folder of the data.</summary>
    public static Setting Data { get; } = new(
        $"{Prefix}DATA",
        "`episode-planner` in the platform's folder for local application data",
        "the folder of the database file and of the keys that sign forms; made where it is missing");

    /// <summary>The server database.</summary>
    public static Setting PostgreSql { get; } = new(
        $"{Prefix}POSTGRES",
        "none: a SQLite file in the data folder",
        "how to reach a PostgreSQL: `Host=db;Database=planner;Username=planner;Password=…`");

    /// <summary>Where it listens.</summary>
    public static Setting Urls { get; } = new(
        $"{Prefix}URLS",
        "`http://127.0.0.1:5080`",
        "where it listens, several with `;` between: plain HTTP at an IP address, `localhost` or `*`; TLS is the business of a "
        + "proxy before it");

    /// <summary>The names it answers for.</summary>
    public static Setting Hosts { get; } = new(
        $"{Prefix}HOSTS",
        "none: `localhost` and loopback addresses",
        "further names it may be called by, with `;` between: `planner.example`, `*.shed.example`");

    /// <summary>The form of the log.</summary>
    public static Setting Log { get; } = new(
        $"{Prefix}LOG", "`text`", "the form of the log: `text` for people, `json` for programs, an object a line");

    /// <summary>How long it waits when it stops.</summary>
    public static Setting StopSeconds { get; } = new(
        $"{Prefix}STOP_SECONDS", "`30`", "how long it waits for requests in flight when it is stopped, 0 to 600");

    /// <summary>How long a request may take.</summary>
    public static Setting RequestSeconds { get; } = new(
        $"{Prefix}REQUEST_SECONDS", "`30`", "how long a request may take, 1 to 600");

    /// <summary>All of them, in the order in which they are documented.</summary>
    public static ValueList<Setting> All { get; } = [Data, PostgreSql, Urls, Hosts, Log, StopSeconds, RequestSeconds];
}
