namespace EpisodePlanner.Scheduling.Engine;

/// <summary>What every station still has free while a schedule is being made.</summary>
internal sealed class BenchState
{
    private readonly CompiledProblem compiled;
    private readonly FreeTime[] free;
    private readonly TakenTime?[] taken;

    public BenchState(CompiledProblem compiled)
    {
        this.compiled = compiled;
        var stations = compiled.Problem.Stations;
        free = [.. stations.Select(_ => new FreeTime())];
        taken = [.. stations.Select(s => s.Kind == StationKind.Person ? null : new TakenTime())];
        Reset();
    }

    public int Horizon => compiled.Problem.Horizon;

    public IntervalCalendar Presence => compiled.Problem.Presence;

    public CompiledProblem Compiled => compiled;

    /// <summary>Where nothing is left for some lengths of work.</summary>
    public FullStretches FullStretches { get; } = new();

    public FreeTime Free(int station) => free[station];

    /// <summary>What a machine or place is taken for; people have none.</summary>
    public TakenTime Taken(int station) => taken[station]!;

    /// <summary>Nothing taken; people whose work is going on are set up where it is.</summary>
    public void Reset()
    {
        Clear();
        foreach (var (person, placeMark) in compiled.SittingAtStart)
        {
            free[person].SitAtStart(placeMark);
        }
    }

    /// <summary>Nothing taken, and nobody set up anywhere.</summary>
    public void Clear()
    {
        FullStretches.Clear();
        for (var s = 0; s < free.Length; s++)
        {
            free[s].Reset(compiled.Problem.Stations[s].Hours);
            taken[s]?.Clear();
        }
    }

    /// <summary>Takes a station for work at a place.</summary>
    public void Take(int station, int start, int end, int placeMark)
    {
        free[station].Take(start, end, placeMark);
        taken[station]?.Add(start, end);
    }
}
