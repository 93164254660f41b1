using EpisodePlanner.Scheduling.Networks;
using EpisodePlanner.Scheduling.Packed;
using Google.OrTools.Sat;

namespace EpisodePlanner.Proving.Packed;

/// <summary>A plain problem in the solver's terms: one interval an activity, one cumulative constraint a station.</summary>
/// <remarks>P. Baptiste, C. Le Pape and W. Nuijten, "Constraint-Based Scheduling" (2001), for the constraints.</remarks>
public sealed class PackedModel
{
    private readonly PackedProblem problem;
    private readonly IntVar[] starts;

    private PackedModel(PackedProblem problem, int latestEnd)
    {
        this.problem = problem;
        var times = NetworkTimes.Of(problem.Network);
        EndWithoutStations = (int)times.End;
        End = Model.NewIntVar(times.End, latestEnd, "end");
        // Where latestEnd is the end of a known schedule, every start has at least that schedule's value.
        var room = latestEnd - times.End;
        starts = [.. Enumerable.Range(0, problem.Count).Select(i => Model.NewIntVar(times.EarlyStart[i], times.LateStart[i] + room, $"s{i}"))];
        for (var i = 0; i < problem.Count; i++)
        {
            Model.Add(End >= starts[i] + Duration(i));
        }

        foreach (var link in problem.Network.Links)
        {
            Model.Add(starts[link.To] >= starts[link.From] + (Duration(link.From) + link.Lag));
        }

        AddStations();
        Model.Minimize(End);
    }

    /// <summary>The model; its objective is the end.</summary>
    public CpModel Model { get; } = new();

    /// <summary>How soon all could end if stations were no matter.</summary>
    public int EndWithoutStations { get; }

    /// <summary>The last finish.</summary>
    public IntVar End { get; }

    /// <summary>By activity.</summary>
    public IReadOnlyList<IntVar> Starts => starts;

    /// <summary>The model of all schedules that end by some end.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="latestEnd">
    /// Not less than the end without stations; <see cref="PackedProblem.Horizon"/> for all schedules worth looking at.
    /// </param>
    public static PackedModel Of(PackedProblem problem, int latestEnd) => new(problem, latestEnd);

    /// <summary>Begins the search at a schedule that ends by the model's latest end.</summary>
    public void StartFrom(PackedSchedule schedule)
    {
        for (var i = 0; i < starts.Length; i++)
        {
            Model.AddHint(starts[i], schedule.Starts[i]);
        }

        Model.AddHint(End, schedule.End);
    }

    private void AddStations()
    {
        var intervals = starts.Select((start, i) => Model.NewFixedSizeIntervalVar(start, Duration(i), $"i{i}")).ToArray();
        for (var station = 0; station < problem.Stations.Length; station++)
        {
            var takers = Enumerable.Range(0, problem.Count).Where(i => Duration(i) > 0 && problem.Demands[i][station] > 0).ToList();
            var capacity = problem.Stations[station].Capacity;
            if (capacity == 1)
            {
                Model.AddNoOverlap(takers.Select(i => intervals[i]));
            }
            else if (takers.Sum(i => (long)problem.Demands[i][station]) > capacity)
            {
                Model.AddCumulative(capacity).AddDemands(takers.Select(i => intervals[i]), takers.Select(i => problem.Demands[i][station]));
            }
        }
    }

    private long Duration(int activity) => problem.Network.Activities[activity].Duration;
}
