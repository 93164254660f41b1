using EpisodePlanner.Scheduling.Packed;

namespace EpisodePlanner.Checking;

/// <summary>Brute force for tiny plain problems: every start of every activity.</summary>
public static class PlainExhaustiveSearch
{
    /// <summary>The least end of all schedules.</summary>
    public static int LeastEnd(PackedProblem problem)
    {
        var best = problem.Horizon;
        Place(problem, new int[problem.Count], 0, ref best);
        return best;
    }

    private static void Place(PackedProblem problem, int[] starts, int depth, ref int best)
    {
        if (depth == starts.Length)
        {
            best = Math.Min(best, starts.Select((start, i) => start + Duration(problem, i)).Max());
            return;
        }

        var activity = problem.Network.Order[depth];
        var earliest = problem.Network.Links.Where(link => link.To == activity)
            .Select(link => starts[link.From] + Duration(problem, link.From) + (int)link.Lag).Append(0).Max();
        for (var start = earliest; start + Duration(problem, activity) <= best; start++)
        {
            starts[activity] = start;
            if (HasRoom(problem, starts, depth))
                Place(problem, starts, depth + 1, ref best);
        }
    }

    /// <summary>Whether all units are enough for the activities placed so far, at every time of the last one.</summary>
    private static bool HasRoom(PackedProblem problem, int[] starts, int depth)
    {
        var last = problem.Network.Order[depth];
        var placed = problem.Network.Order[..(depth + 1)];
        return Enumerable.Range(starts[last], Duration(problem, last)).All(time =>
            problem.Stations.Select((station, s) => placed
                .Where(i => starts[i] <= time && time < starts[i] + Duration(problem, i))
                .Sum(i => problem.Demands[i][s]) <= station.Capacity)
            .All(fits => fits));
    }

    private static int Duration(PackedProblem problem, int activity) => (int)problem.Network.Activities[activity].Duration;
}
