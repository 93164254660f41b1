using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Planning.Tests.Plans;

/// <summary>
/// The earliest finishes thinkable for a schedule with stages still missing: after what they wait for, with somebody
/// there for all their minutes, as if nobody else needed them.
/// </summary>
internal sealed class TinyFloor
{
    private readonly Squeezed squeezed;
    private readonly List<int> order = [];

    public TinyFloor(Squeezed squeezed)
    {
        this.squeezed = squeezed;
        var problem = squeezed.Problem;
        while (order.Count < problem.Stages.Count)
        {
            order.Add(Enumerable.Range(0, problem.Stages.Count).First(stage => !order.Contains(stage)
                && problem.Links.All(link => link.To != stage || order.Contains(link.From))));
        }

        var people = problem.Stations.Where(station => station.Kind == StationKind.Person).ToList();
        var work = problem.Stages.Sum(stage => stage.Minutes);
        End = squeezed.RealFinish(Enumerable.Range(0, problem.Horizon + 1).First(minute =>
            people.Sum(person => person.Hours.WorkBefore(minute)) >= work));
    }

    /// <summary>The first minute until which all people together have been there for as long as all the work takes.</summary>
    public int End { get; }

    /// <summary>By stage, real minutes.</summary>
    public int[] Finishes(BenchSchedule schedule)
    {
        var problem = squeezed.Problem;
        var finishes = new int[problem.Stages.Count];
        foreach (var stage in order)
        {
            var from = problem.Links.Where(link => link.To == stage).Select(link => finishes[link.From]).DefaultIfEmpty(0).Max();
            finishes[stage] = schedule.IsPlaced(stage)
                ? schedule.Finish(stage)
                : problem.Presence.Finish(from, problem.Stages[stage].Minutes) ?? problem.Horizon;
        }

        return [.. finishes.Select(squeezed.RealFinish)];
    }
}
