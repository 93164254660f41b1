using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Checking;

/// <summary>
/// Everything around one stage: the other stages in their places and the hours of the problem, with some of it relaxed.
/// </summary>
internal sealed class Surroundings
{
    private readonly IReadOnlyList<SchedulePart[]?> placed;
    private readonly ProblemHours hours;
    private readonly Dictionary<int, Hours> free = [];
    private readonly Dictionary<(int Person, int Place), Hours> shared = [];
    private readonly ILookup<int, Stretch> taken;

    /// <param name="problem">The problem.</param>
    /// <param name="hours">Its hours.</param>
    /// <param name="placed">The parts of the stages that stay in their places; null or empty for the others.</param>
    /// <param name="relaxed">What is imagined away.</param>
    public Surroundings(
        BenchProblem problem, ProblemHours hours, IReadOnlyList<SchedulePart[]?> placed, Relaxation relaxed)
    {
        Problem = problem;
        Relaxed = relaxed;
        this.hours = hours;
        this.placed = placed;
        var takings = new List<Taking>();
        for (var stage = 0; stage < placed.Count; stage++)
        {
            if (placed[stage] is { Length: > 0 } parts)
                Takings.AddTo(takings, problem, stage, parts);
        }

        taken = takings.Where(t => !relaxed.Held.Contains((t.Stage, t.Station)))
            .ToLookup(t => t.Station, t => new Stretch(t.Start, t.End));
        People = new PeopleAround(this, placed);
    }

    public BenchProblem Problem { get; }

    public Relaxation Relaxed { get; }

    /// <summary>What the people's other work leaves of a sitting.</summary>
    public PeopleAround People { get; }

    public Hours Presence => Relaxed.Presence ? Hours.Always : hours.Presence;

    public Hours Station(int station) => Relaxed.Stations.Contains(station) ? Hours.Always : hours.Station(station);

    public Hours Limit(int limit) => Relaxed.Limits.Contains(limit) ? Hours.Always : hours.Limit(limit);

    public Hours LookAt(IntervalCalendar times) => hours.Of(times);

    public int? WaitEnd(BenchStage wait, int start) => hours.WaitEnd(wait, start);

    /// <summary>When no other stage takes a station.</summary>
    public Hours Free(int station)
    {
        if (!free.TryGetValue(station, out var result))
        {
            result = Hours.Always.Without(Hours.From(taken[station]));
            free.Add(station, result);
        }

        return result;
    }

    /// <summary>When a person and a place are both open.</summary>
    public Hours Shared(int person, int place)
    {
        if (!shared.TryGetValue((person, place), out var result))
        {
            result = Station(person).And(Station(place));
            shared.Add((person, place), result);
        }

        return result;
    }

    /// <summary>Open for every station and limit of a list.</summary>
    public Hours Open(IEnumerable<int> stations, IEnumerable<int> limits) =>
        limits.Aggregate(stations.Aggregate(Hours.Always, (all, s) => all.And(Station(s))), (all, l) => all.And(Limit(l)));

    /// <summary>Free of other stages at every station of a list.</summary>
    public Hours AllFree(IEnumerable<int> stations) => stations.Aggregate(Hours.Always, (all, s) => all.And(Free(s)));

    /// <summary>The parts of a stage that stays in its place; empty for the others.</summary>
    public SchedulePart[] Placed(int stage) => placed[stage] ?? [];

    /// <summary>The earliest moment a link's lag allows after a moment of the stage waited for; null for never.</summary>
    public long? Lag(BenchLink link, int moment) => hours.Lag(link, moment);
}
