using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Planning;

/// <summary>Turns what a stage needs into its choices of stations.</summary>
internal sealed class StageModes(Workshop workshop, StationTable table)
{
    /// <summary>The choices of a task's stage; only those with a given station where it is going on with one.</summary>
    public IReadOnlyList<StageMode> Of(WorkTask task, Stage stage, Id? goingOnWith)
    {
        var choices = stage.Needs.Select(choice => choice.Order().ToList())
            .OrderBy(choice => string.Join(' ', choice), StringComparer.Ordinal)
            .ToList();
        if (stage.Kind != StageKind.Wait && NeedsAnybody(stage) && !choices.Any(choice => choice.Exists(IsPerson)))
        {
            choices.Add([.. table.People]);
        }

        var sets = Combinations(choices).ToList();
        var modes = sets.Where(set => goingOnWith is not { } id || set.Contains(id)).Select(set => Mode(task, stage, set)).ToList();
        return modes.Count > 0 ? modes : [.. sets.Select(set => Mode(task, stage, set))];
    }

    /// <summary>The choices of a tail's part: any person, at the desk where there is one.</summary>
    public IReadOnlyList<StageMode> OfTail()
    {
        var desks = workshop.Settings.Desk is { } desk
            ? [desk]
            : workshop.Places.Where(p => p.Kind == PlaceKind.Desk).Select(p => p.Id).ToList();
        List<List<Id>> choices = desks.Count > 0 ? [[.. table.People], desks] : [[.. table.People]];
        return [.. Combinations(choices).Select(set => new StageMode
        {
            Stations = [.. set.Select(table.IndexOf)],
            Limits = table.LimitsOf(set, loud: false),
        })];
    }

    /// <summary>
    /// The choices of a shot: any person, while its place is open and light enough. The place is not taken, and nothing is
    /// set up: pictures are taken beside what stands there.
    /// </summary>
    public IReadOnlyList<StageMode> OfShot(Place? place) => [.. table.People.Select(person => new StageMode
    {
        Stations = [table.IndexOf(person)],
        Limits = place is null ? [] : [.. table.LimitsOf([place.Id], loud: false), .. table.OpenHoursOf(place)],
    })];

    private bool NeedsAnybody(Stage stage) =>
        stage.Kind == StageKind.Attended || Math.Max(stage.LoadMinutes, stage.UnloadMinutes) > Touch;

    private int Touch => workshop.Settings.TouchMinutes ?? Defaults.TouchMinutes;

    private bool IsPerson(Id id) => table.Stations[table.IndexOf(id)].Kind == StationKind.Person;

    private bool IsMachine(Id id) => workshop.Machines.Contains(id);

    private StageMode Mode(WorkTask task, Stage stage, IReadOnlyList<Id> set)
    {
        var machine = stage.Kind == StageKind.Run ? set.First(IsMachine) : default;
        var others = set.Where(id => stage.Kind != StageKind.Run || id != machine).Distinct();
        return new StageMode
        {
            Stations = [.. others.Select(table.IndexOf)],
            Machine = stage.Kind == StageKind.Run ? table.IndexOf(machine) : -1,
            Limits = stage.Kind == StageKind.Wait ? [] : table.LimitsOf(set, stage.Loud),
            RunsAlone = stage.Kind == StageKind.Run && MayRunAlone(task, machine),
        };
    }

    private bool MayRunAlone(WorkTask task, Id id) =>
        task.MayRunAlone
        && workshop.Machines.Find(id) is { MayRunAlone: true } machine
        && RunningAlone.CanBeAllowed(machine.Kind);

    /// <summary>One id from every list, in the order of the lists; a set that would name a station twice is left out.</summary>
    private static IEnumerable<IReadOnlyList<Id>> Combinations(IReadOnlyList<IReadOnlyList<Id>> choices)
    {
        IEnumerable<IReadOnlyList<Id>> sets = [[]];
        foreach (var choice in choices)
        {
            sets = sets.SelectMany(set => choice.Where(id => !set.Contains(id)).Select(id => (IReadOnlyList<Id>)[.. set, id]));
        }

        return sets;
    }
}
