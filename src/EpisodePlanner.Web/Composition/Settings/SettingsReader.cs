using System.Globalization;
using EpisodePlanner.Planning;
using EpisodePlanner.Web.Serving;

namespace EpisodePlanner.Web.Composition;

/// <summary>What the environment says: settings, or everything that is wrong with it.</summary>
/// <param name="Settings">The settings; null where something is wrong.</param>
/// <param name="Reasons">Everything that is wrong; the place is the variable's name.</param>
/// <param name="Unknown">Variables that look like settings and are none; perhaps misspelt.</param>
public sealed record SettingsResult(ServerSettings? Settings, ValueList<Reason> Reasons, ValueList<string> Unknown);

/// <summary>Reads <see cref="ServerSettings"/> from environment variables; an empty one counts as not set.</summary>
public sealed class SettingsReader
{
    private const string TestPrefix = $"{SettingsTable.Prefix}TEST_";
    private const int LongestSeconds = 600;
    private readonly IReadOnlyDictionary<string, string> environment;
    private readonly List<Reason> reasons = [];

    private SettingsReader(IReadOnlyDictionary<string, string> environment) => this.environment = environment;

    /// <summary>Reads every setting and tells everything that is wrong at once.</summary>
    /// <param name="environment">The environment variables.</param>
    /// <param name="isDemo">Whether the demo is asked for.</param>
    public static SettingsResult Read(IReadOnlyDictionary<string, string> environment, bool isDemo)
    {
        var reader = new SettingsReader(environment);
        var settings = new ServerSettings
        {
            DataFolder = reader.Folder(),
            PostgreSql = reader.Connection(),
            Addresses = reader.Addresses(),
            Hosts = reader.Hosts(),
            LogAsJson = reader.IsJson(),
            StopAfter = reader.Seconds(SettingsTable.StopSeconds, 0, 30),
            RequestTime = reader.Seconds(SettingsTable.RequestSeconds, 1, 30),
            IsDemo = isDemo,
        };
        return new SettingsResult(reader.reasons.Count == 0 ? settings : null, reader.reasons.ToValueList(), Unknown(environment));
    }

    private static ValueList<string> Unknown(IReadOnlyDictionary<string, string> environment) => environment.Keys
        .Where(name => name.StartsWith(SettingsTable.Prefix, StringComparison.Ordinal)
            && !name.StartsWith(TestPrefix, StringComparison.Ordinal)
            && SettingsTable.All.All(setting => setting.Name != name))
        .Order(StringComparer.Ordinal)
        .ToValueList();

    private string Folder()
    {
        var folder = Value(SettingsTable.Data) ?? DefaultFolder();
        if (folder.Contains('\0', StringComparison.Ordinal) || folder.Length == 0)
        {
            Refuse(SettingsTable.Data, "No folder is known to keep data in; name one, as in /var/lib/episode-planner.");
            return "";
        }

        return Path.GetFullPath(folder);
    }

    private static string DefaultFolder()
    {
        var local = Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.DoNotVerify);
        return local.Length == 0 ? "" : Path.Combine(local, "episode-planner");
    }

    private string? Connection()
    {
        var text = Value(SettingsTable.PostgreSql);
        if (text is not null && Storing.ProblemOfPostgreSql(text) is { } problem)
        {
            Refuse(SettingsTable.PostgreSql, problem);
        }

        return text;
    }

    private ValueList<ListenAddress> Addresses()
    {
        var addresses = new List<ListenAddress>();
        foreach (var text in Several(SettingsTable.Urls))
        {
            if (ListenAddress.Parse(text) is { } address)
            {
                addresses.Add(address);
            }
            else
            {
                Refuse(
                    SettingsTable.Urls,
                    $"'{text}' is nowhere to listen; write http, an IP address, localhost or *, and a port, as in "
                    + "http://127.0.0.1:5080. TLS is the business of a proxy before it.");
            }
        }

        return addresses.Count > 0 ? addresses.ToValueList() : [ListenAddress.Default];
    }

    private ValueList<string> Hosts()
    {
        var hosts = Several(SettingsTable.Hosts);
        foreach (var host in hosts.Where(host => !HostNames.IsPattern(host)))
        {
            Refuse(
                SettingsTable.Hosts,
                $"'{host}' is no name of a host; write names without scheme and port, as in planner.example, *.shed.example or [fd00::1].");
        }

        return hosts;
    }

    private bool IsJson()
    {
        var text = Value(SettingsTable.Log);
        if (text is not (null or "text" or "json"))
        {
            Refuse(SettingsTable.Log, $"'{text}' is unknown; write text or json.");
        }

        return text == "json";
    }

    private TimeSpan Seconds(Setting setting, int least, int otherwise)
    {
        var text = Value(setting);
        if (text is null)
        {
            return TimeSpan.FromSeconds(otherwise);
        }

        if (int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var seconds)
            && seconds >= least && seconds <= LongestSeconds)
        {
            return TimeSpan.FromSeconds(seconds);
        }

        Refuse(setting, $"'{text}' is not a whole number of seconds from {least} to {LongestSeconds}.");
        return TimeSpan.FromSeconds(otherwise);
    }

    private ValueList<string> Several(Setting setting) => (Value(setting) ?? "")
        .Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
        .ToValueList();

    private string? Value(Setting setting) =>
        environment.TryGetValue(setting.Name, out var value) && value.Trim() is { Length: > 0 } trimmed ? trimmed : null;

    private void Refuse(Setting setting, string says) => reasons.Add(new Reason(setting.Name, says));
}
