using EpisodePlanner.Planning;
using EpisodePlanner.Web.Serving;

namespace EpisodePlanner.Web.Composition;

/// <summary>How a server runs; read by <see cref="SettingsReader"/>, sound once it exists.</summary>
public sealed record ServerSettings
{
    /// <summary>The folder of the database file and of the keys that sign forms.</summary>
    public required string DataFolder { get; init; }

    /// <summary>How to reach a PostgreSQL; null for the SQLite file in <see cref="DataFolder"/>. May hold a password.</summary>
    public string? PostgreSql { get; init; }

    /// <summary>Where it listens, plain HTTP.</summary>
    public ValueList<ListenAddress> Addresses { get; init; } = [ListenAddress.Default];

    /// <summary>The names it answers for, beside loopback's.</summary>
    public ValueList<string> Hosts { get; init; } = [];

    /// <summary>Whether each line of the log is a JSON object.</summary>
    public bool LogAsJson { get; init; }

    /// <summary>How long requests in flight are waited for when it stops.</summary>
    public TimeSpan StopAfter { get; init; } = TimeSpan.FromSeconds(30);

    /// <summary>How long a request may take.</summary>
    public TimeSpan RequestTime { get; init; } = TimeSpan.FromSeconds(30);

    /// <summary>How long a page waits for the further plans that weigh what starts tonight and what was assumed.</summary>
    public TimeSpan PatienceWithTrials { get; init; } = TimeSpan.FromMilliseconds(60);

    /// <summary>Whether it keeps and shows the demo workshop, in a database of its own.</summary>
    public bool IsDemo { get; init; }

    /// <summary>Every name it answers for: those listed, those it listens at, and loopback's.</summary>
    public HostNames Answers => new(
        [.. Hosts, .. Addresses.Where(address => !address.IsEverywhere).Select(address => address.Host)]);

    /// <summary>The SQLite file.</summary>
    public string DatabaseFile => Path.Combine(DataFolder, IsDemo ? "demo.db" : "episode-planner.db");

    /// <summary>Where the data is, for people; without secrets.</summary>
    public string DataPlace => PostgreSql is null ? DatabaseFile : "the PostgreSQL of EPISODE_PLANNER_POSTGRES";

    /// <summary>Everything but secrets.</summary>
    public override string ToString() => $"{DataPlace}, {Addresses}";
}
