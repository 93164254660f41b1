namespace EpisodePlanner.Scheduling.Engine;

/// <summary>One mode of a stage with its stations sorted by what they are.</summary>
internal sealed class CompiledMode
{
    public CompiledMode(BenchProblem problem, StageMode mode)
    {
        var stations = problem.Stations;
        Persons = [.. mode.Stations.Where(s => stations[s].Kind == StationKind.Person)];
        Place = mode.Stations.Where(s => stations[s].Kind == StationKind.Place).FirstOrDefault(-1);
        Others = [.. mode.Stations.Where(s => stations[s].Kind != StationKind.Person && s != Place)];
        Holdable = [.. mode.Stations.Where(s => stations[s].Kind != StationKind.Person)];
        All = [.. mode.Stations];
        LimitIds = [.. mode.Limits];
        Limits = [.. mode.Limits.Select(limit => problem.Limits[limit].Open)];
        Machine = mode.Machine;
        RunsAlone = mode.RunsAlone;
        var sits = Place >= 0 && Persons.Length > 0;
        SetUp = sits ? stations[Place].SetUpMinutes : 0;
        Tidy = sits ? stations[Place].TidyMinutes : 0;
    }

    /// <summary>What tells one mode from another.</summary>
    public static string Key(StageMode mode) =>
        $"{string.Join(',', mode.Stations)}|{mode.Machine}|{string.Join(',', mode.Limits)}|{mode.RunsAlone}";

    /// <summary>The people.</summary>
    public int[] Persons { get; }

    /// <summary>The place where the work is done; −1 for none.</summary>
    public int Place { get; }

    /// <summary>How <see cref="FreeTime"/> remembers the place.</summary>
    public int PlaceMark => Place + 1;

    /// <summary>Machines, and places after the first.</summary>
    public int[] Others { get; }

    /// <summary>Machines and places.</summary>
    public int[] Holdable { get; }

    public int[] All { get; }

    public int[] LimitIds { get; }

    public IntervalCalendar[] Limits { get; }

    public int Machine { get; }

    public bool RunsAlone { get; }

    /// <summary>Minutes that its people need to set up; 0 where there are none.</summary>
    public int SetUp { get; }

    /// <summary>Minutes that its people need to tidy; 0 where there are none.</summary>
    public int Tidy { get; }
}
