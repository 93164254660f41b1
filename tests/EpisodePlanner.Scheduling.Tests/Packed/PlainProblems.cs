using EpisodePlanner.Checking;
using EpisodePlanner.Scheduling.Networks;
using EpisodePlanner.Scheduling.Packed;

namespace EpisodePlanner.Scheduling.Tests.Packed;

/// <summary>Short ways to plain problems, and schedules that are known to be feasible.</summary>
internal static class PlainProblems
{
    public static ActivityNetwork Network(long[] durations, params NetworkLink[] links)
    {
        var activities = durations.Select((duration, i) => new NetworkActivity($"a{i}", duration));
        Assert.True(ActivityNetwork.TryCreate(activities, links, out var network, out _));
        return network!;
    }

    public static PackedProblem Sound(PackedInput input) =>
        Assert.IsType<PackedProblemResult.Sound>(PackedProblem.Create(input)).Problem;

    public static IReadOnlyList<string> Reasons(PackedInput input) =>
        Assert.IsType<PackedProblemResult.Refused>(PackedProblem.Create(input)).Reasons;

    /// <summary>Activities that all take one unit of one station.</summary>
    public static PackedInput OneStation(int capacity, long[] durations, params NetworkLink[] links) => new()
    {
        Network = Network(durations, links),
        Stations = [new PackedStation("hands", capacity)],
        Demands = [.. durations.Select(_ => (int[])[1])],
    };

    /// <summary>The best schedule found, held against the checker.</summary>
    public static PackedSearchResult Search(PackedProblem problem, int schedules, ulong seed = 1, IScheduleObjective? objective = null) =>
        Checked(PackedSearch.Run(problem, objective ?? new Makespan(), new SearchBudget(schedules, seed)));

    /// <summary>The same, watched and perhaps stopped.</summary>
    public static PackedSearchResult Watched(PackedProblem problem, int schedules, IProgress<double>? progress, CancellationToken stop) =>
        Checked(PackedSearch.Run(problem, new Makespan(), new SearchBudget(schedules), progress, stop));

    public static PackedSearchResult Checked(PackedSearchResult found)
    {
        Checked(found.Schedule);
        return found;
    }

    public static PackedSchedule Checked(PackedSchedule schedule)
    {
        var wrong = PackedChecker.Check(schedule);
        Assert.True(wrong.Count == 0, string.Join(' ', wrong));
        return schedule;
    }
}
