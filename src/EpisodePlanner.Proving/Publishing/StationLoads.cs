using EpisodePlanner.Planning;
using EpisodePlanner.Proving.Bench;
using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Proving.Publishing;

/// <summary>
/// Says where work that must lie between two moments takes more minutes than the stations that do it are open: for each
/// station alone, and for all people together.
/// </summary>
/// <remarks>Energetic reasoning: P. Baptiste, C. Le Pape and W. Nuijten, "Constraint-Based Scheduling" (2001).</remarks>
internal sealed class StationLoads
{
    private readonly BenchProblem problem;
    private readonly EarliestDates earliest;
    private readonly List<Group> groups = [];

    public StationLoads(BenchProblem problem, WorkHours hours, NeededStages needed, EarliestDates earliest)
    {
        (this.problem, this.earliest) = (problem, earliest);
        var people = Enumerable.Range(0, problem.Stations.Count).Where(s => problem.Stations[s].Kind == StationKind.Person).ToList();
        foreach (var stations in Enumerable.Range(0, problem.Stations.Count).Select(s => (List<int>)[s]).Append(people).Where(g => g.Count > 0))
        {
            var work = needed.Stages.Select(stage => (Stage: stage, Minutes: Least(problem.Stages[stage], stations)))
                .Where(x => x.Minutes > 0).ToList();
            if (work.Count > 0)
            {
                groups.Add(new Group([.. stations], Open(hours, stations, work.ConvertAll(x => x.Stage)), work));
            }
        }
    }

    /// <summary>The load that is the furthest above what is open, where every stage must be finished by a date; null for none.</summary>
    /// <param name="latest">By stage.</param>
    public PublishingBinding.Load? TooMuch(int[] latest) => groups
        .SelectMany(group => TooMuch(group, latest))
        .MaxBy(load => (load.Needed - load.Open, -load.From));

    private IEnumerable<PublishingBinding.Load> TooMuch(Group group, int[] latest)
    {
        foreach (var from in group.Work.Select(x => earliest.Starts[x.Stage]).Distinct())
        {
            var needed = 0L;
            foreach (var (stage, minutes) in group.Work
                .Where(x => earliest.Starts[x.Stage] >= from && latest[x.Stage] < EarliestDates.Never)
                .OrderBy(x => latest[x.Stage]))
            {
                needed += minutes;
                var until = Math.Max(from, latest[stage]);
                var open = group.Open.Sum(hours => (long)hours.WorkBetween(from, until));
                if (needed > open)
                {
                    yield return new PublishingBinding.Load(group.Stations.ToValueList(), Told(group, from), until, needed, open);
                }
            }
        }
    }

    /// <summary>Where nothing is open before the work can begin, it can as well begin at once.</summary>
    private static int Told(Group group, int from) => group.Open.All(hours => hours.WorkBefore(from) == 0) ? 0 : from;

    /// <summary>Minutes of some stations that a stage takes whatever its mode.</summary>
    private static long Least(BenchStage about, List<int> stations) => about.Kind switch
    {
        StageKind.Attended => about.Modes.Min(mode => (long)mode.Stations.Count(stations.Contains) * about.Minutes),
        StageKind.Run when !about.Begun => about.Modes.Min(mode =>
            (stations.Contains(mode.Machine) ? (long)about.LoadMinutes + about.Minutes : 0)
            + (about.LoadTakesHands ? (long)mode.Stations.Count(stations.Contains) * about.LoadMinutes : 0)),
        _ => 0,
    };

    /// <summary>When the stations do this work; of one station only the hours in which its work can lie.</summary>
    private List<IntervalCalendar> Open(WorkHours hours, List<int> stations, List<int> stages)
    {
        var own = stations.ConvertAll(station => problem.Stations[station].Hours);
        if (own.Count > 1 || stages.Any(stage => problem.Stages[stage].Kind != StageKind.Attended))
        {
            return own;
        }

        var modes = stages.SelectMany(stage => problem.Stages[stage].Modes).Select(hours.OfWork).Distinct();
        return [modes.Aggregate(IntervalCalendar.Never, (one, two) => one.Union(two))];
    }

    private sealed record Group(IReadOnlyList<int> Stations, List<IntervalCalendar> Open, List<(int Stage, long Minutes)> Work);
}
