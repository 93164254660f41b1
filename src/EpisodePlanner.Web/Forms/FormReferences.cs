using EpisodePlanner.Planning;

namespace EpisodePlanner.Web.Forms;

/// <summary>What members refer to by id, and what of it a workshop has to choose from.</summary>
internal sealed class FormReferences(Workshop workshop)
{
    private const string Stations = "stations";
    private const string Milestones = "milestones";
    private const string Failures = "failures";

    private static readonly Dictionary<(string Owner, string Member), string> Table = new()
    {
        [("settings", "desk")] = ThingKinds.Places.Name,
        [("machine", "place")] = ThingKinds.Places.Name,
        [("workTask", "milestone")] = Milestones,
        [("workTask", "series")] = ThingKinds.Series.Name,
        [("taskLink", "task")] = ThingKinds.Tasks.Name,
        [("taskLink", "lagStation")] = Stations,
        [("shot", "lostBy")] = ThingKinds.Tasks.Name,
        [("episode", "series")] = ThingKinds.Series.Name,
        [("episode", "milestones")] = Milestones,
        [("episode", "tells")] = Failures,
        [("slotRule", "series")] = ThingKinds.Series.Name,
        [("upload", "series")] = ThingKinds.Series.Name,
        [("upload", "episode")] = ThingKinds.Episodes.Name,
        [("logEntry", "task")] = ThingKinds.Tasks.Name,
        [("logEntry", "episode")] = ThingKinds.Episodes.Name,
        [("logEntry", "station")] = Stations,
        [("toldDate", "episode")] = ThingKinds.Episodes.Name,
        [("timedLine", "episode")] = ThingKinds.Episodes.Name,
        [("booking", "place")] = ThingKinds.Places.Name,
    };

    /// <summary>What a member refers to, or null.</summary>
    public static string? Find(string owner, string member) => Table.GetValueOrDefault((owner, member));

    /// <summary>What can be chosen, by name; milestones in the order of their stories, failures the latest first.</summary>
    public IEnumerable<FormOption> Options(string refersTo) => refersTo switch
    {
        Milestones => workshop.Series.SelectMany(
            series => series.Milestones, (series, m) => new FormOption($"{m.Id}", $"{series.Name}: {m.Name}")),
        Failures => workshop.Log.Where(IsFailure)
            .OrderByDescending(entry => entry.At)
            .Select(entry => new FormOption($"{entry.Id}", ThingNames.Of(entry))),
        Stations => StationNames.Select(station => new FormOption(station.Key, station.Value)),
        _ => ThingKinds.Find(refersTo)!.All(workshop)
            .Select(thing => new FormOption($"{thing.Id}", ThingNames.Of(thing)))
            .OrderBy(option => option.Label, StringComparer.OrdinalIgnoreCase),
    };

    /// <summary>A failure, or what an episode tells of already.</summary>
    private bool IsFailure(LogEntry entry) =>
        entry.Outcome == LogOutcome.Failed || workshop.Episodes.Any(episode => episode.Tells == entry.Id);

    /// <summary>The ids named on a line such as "Nessa or Tam"; what is no station's name stays as it was typed.</summary>
    public IEnumerable<string> StationsOn(string line) => line
        .Split(" or ", StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)
        .Select(name => StationNames.FirstOrDefault(s => string.Equals(s.Value, name, StringComparison.OrdinalIgnoreCase)).Key ?? name);

    /// <summary>A line that names these stations.</summary>
    public string LineOf(IEnumerable<string> stations) =>
        string.Join(" or ", stations.Select(id => StationNames.GetValueOrDefault(id) ?? id));

    private Dictionary<string, string> StationNames => field ??= workshop.People.Select(p => (Id: $"{p.Id}", p.Name))
        .Concat(workshop.Machines.Select(m => (Id: $"{m.Id}", m.Name)))
        .Concat(workshop.Places.Select(p => (Id: $"{p.Id}", p.Name)))
        .DistinctBy(station => station.Id)
        .ToDictionary(station => station.Id, station => station.Name);
}
