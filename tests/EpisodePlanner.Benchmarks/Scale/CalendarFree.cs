using EpisodePlanner.Scheduling;
using EpisodePlanner.Scheduling.Networks;

namespace EpisodePlanner.Benchmarks.Scale;

/// <summary>The calendar-free network of a bench problem: the same links and minutes, no hours and no stations.</summary>
internal sealed class CalendarFree(BenchProblem problem)
{
    private readonly NetworkActivity[] activities =
        [.. problem.Stages.Select(stage => new NetworkActivity(stage.Name, stage.LoadMinutes + stage.Minutes + stage.UnloadMinutes))];

    private readonly NetworkLink[] links = [.. problem.Links.Select(link => new NetworkLink(link.From, link.To, link.Kind, link.Lag))];

    /// <summary>Builds the network and passes through it forward and back.</summary>
    public NetworkTimes Pass() => ActivityNetwork.TryCreate(activities, links, out var network, out _)
        ? NetworkTimes.Of(network)
        : throw new InvalidOperationException("The links of a sound problem gave no network.");
}
