using EpisodePlanner.Scheduling;
using EpisodePlanner.Scheduling.Packed;

namespace EpisodePlanner.Checking;

/// <summary>
/// Says whether a schedule of a plain problem keeps every rule. Written from the rules, unit of time by unit of time,
/// without the kernel's code.
/// </summary>
public static class PackedChecker
{
    /// <summary>Every rule that a schedule breaks, a plain sentence each; none where it is feasible.</summary>
    public static IReadOnlyList<string> Check(PackedSchedule schedule)
    {
        var sentences = new List<string>();
        var activities = schedule.Problem.Network.Activities;
        for (var i = 0; i < activities.Length; i++)
        {
            if (schedule.Starts[i] < 0)
                sentences.Add($"'{activities[i].Name}' starts at {schedule.Starts[i]}, before 0.");
            if (schedule.Finishes[i] - schedule.Starts[i] != activities[i].Duration)
                sentences.Add($"'{activities[i].Name}' does not last {activities[i].Duration}.");
        }

        if (schedule.End != activities.Select((activity, i) => schedule.Starts[i] + activity.Duration).Append(0).Max())
            sentences.Add($"The schedule does not end at {schedule.End}.");

        CheckLinks(schedule, sentences);
        CheckStations(schedule, sentences);
        return sentences;
    }

    private static void CheckLinks(PackedSchedule schedule, List<string> sentences)
    {
        var activities = schedule.Problem.Network.Activities;
        foreach (var link in schedule.Problem.Network.Links)
        {
            var earliest = schedule.Starts[link.From] + activities[link.From].Duration + link.Lag;
            if (link.Kind != LinkKind.After || schedule.Starts[link.To] < earliest)
            {
                sentences.Add($"'{activities[link.To].Name}' starts at {schedule.Starts[link.To]}, but {earliest} is the "
                    + $"earliest after '{activities[link.From].Name}'.");
            }
        }
    }

    private static void CheckStations(PackedSchedule schedule, List<string> sentences)
    {
        var problem = schedule.Problem;
        for (var station = 0; station < problem.Stations.Length; station++)
        {
            // What is taken can only grow where something starts.
            foreach (var moment in schedule.Starts.Distinct())
            {
                var taken = Enumerable.Range(0, problem.Count)
                    .Where(i => schedule.Starts[i] <= moment && moment < schedule.Finishes[i])
                    .Sum(i => (long)problem.Demands[i][station]);
                if (taken > problem.Stations[station].Capacity)
                {
                    sentences.Add($"At {moment}, {taken} of '{problem.Stations[station].Name}' are taken; "
                        + $"there are {problem.Stations[station].Capacity}.");
                }
            }
        }
    }
}
