using EpisodePlanner.Scheduling.Engine;

namespace EpisodePlanner.Scheduling.Causes;

/// <summary>A schedule with what is looked up again and again while it is explained.</summary>
internal sealed class CauseContext
{
    public CauseContext(BenchSchedule schedule)
    {
        Schedule = schedule;
        Compiled = new CompiledProblem(schedule.Problem);
        Occupancy = new Occupancy(schedule);
        var stations = schedule.Problem.Stations;
        PlacesWithSittings = [.. Enumerable.Range(0, stations.Count).Where(s => stations[s].SetUpMinutes + stations[s].TidyMinutes > 0)];
    }

    public BenchSchedule Schedule { get; }

    public CompiledProblem Compiled { get; }

    public Occupancy Occupancy { get; }

    /// <summary>The places where setting up or tidying takes time.</summary>
    public int[] PlacesWithSittings { get; }
}
