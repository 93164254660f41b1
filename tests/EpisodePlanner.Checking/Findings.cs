using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Checking;

/// <summary>A schedule under examination and what was found.</summary>
internal sealed class Findings(BenchSchedule schedule)
{
    public BenchSchedule Schedule { get; } = schedule;

    public BenchProblem Problem { get; } = schedule.Problem;

    public ProblemHours Hours { get; } = new(schedule.Problem);

    public List<string> Sentences { get; } = [];

    /// <summary>Which placed stages have parts whose kinds, modes and order can be relied on.</summary>
    public bool[] WellFormed { get; } = new bool[schedule.Problem.Stages.Count];

    /// <summary>Adds "'stage' what."</summary>
    public void Add(int stage, string what) => Sentences.Add($"'{Problem.Stages[stage].Name}' {what}.");

    /// <summary>Holds work against the hours of stations and limits.</summary>
    public void NeedOpen(int stage, string doing, Stretch when, IEnumerable<int> stations, IEnumerable<int> limits)
    {
        foreach (var station in stations.Where(s => !IsOpen(Hours.Station(s), when)))
            Add(stage, $"{doing} from {when.Start} to {when.End} while {Problem.Stations[station].Name} is closed");

        foreach (var limit in limits.Where(l => !Hours.Limit(l).HasAll(when.Start, when.End)))
            Add(stage, $"{doing} from {when.Start} to {when.End} outside {Problem.Limits[limit].Name}");
    }

    /// <summary>Holds a touch against presence; one of no length needs somebody at its minute.</summary>
    public void NeedPresence(int stage, string doing, Stretch when)
    {
        if (!IsOpen(Hours.Presence, when))
            Add(stage, $"{doing} from {when.Start} to {when.End} with nobody present");
    }

    private static bool IsOpen(Hours hours, Stretch when) =>
        when.Start == when.End ? hours.HasMinute(when.Start) : hours.HasAll(when.Start, when.End);
}
