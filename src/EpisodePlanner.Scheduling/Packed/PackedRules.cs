using EpisodePlanner.Scheduling.Networks;

namespace EpisodePlanner.Scheduling.Packed;

/// <summary>What must hold for the parts of a <see cref="PackedProblem"/>.</summary>
internal static class PackedRules
{
    /// <summary>Every reason against the input, and the sum of all durations and lags where there is none.</summary>
    public static IReadOnlyList<string> Check(PackedInput input, out int horizon)
    {
        var reasons = new List<string>();
        foreach (var station in input.Stations.Where(station => station.Capacity < 1))
        {
            reasons.Add($"'{station.Name}' has a capacity of {station.Capacity}; a station has at least one unit.");
        }

        CheckDemands(input, reasons);
        foreach (var link in input.Network.Links)
        {
            CheckLink(input.Network, link, reasons);
        }

        horizon = Horizon(input.Network, reasons);
        return reasons;
    }

    private static void CheckDemands(PackedInput input, List<string> reasons)
    {
        var activities = input.Network.Activities;
        if (input.Demands.Count != activities.Length)
        {
            reasons.Add($"There are demands for {input.Demands.Count} activities; there must be one list for each of the {activities.Length}.");
            return;
        }

        for (var activity = 0; activity < activities.Length; activity++)
        {
            CheckDemand(input, activities[activity].Name, input.Demands[activity], reasons);
        }
    }

    private static void CheckDemand(PackedInput input, string name, IReadOnlyList<int> demand, List<string> reasons)
    {
        if (demand.Count != input.Stations.Count)
        {
            reasons.Add($"'{name}' names {demand.Count} demands; there are {input.Stations.Count} stations.");
            return;
        }

        foreach (var (station, units) in input.Stations.Zip(demand))
        {
            if (units < 0 || units > station.Capacity)
            {
                reasons.Add($"'{name}' takes {units} of '{station.Name}'; it can take 0 to {station.Capacity}.");
            }
        }
    }

    private static void CheckLink(ActivityNetwork network, NetworkLink link, List<string> reasons)
    {
        var (from, to) = (network.Activities[link.From].Name, network.Activities[link.To].Name);
        if (link.Kind != LinkKind.After)
        {
            reasons.Add($"'{to}' is tied to '{from}' by {link.Kind}; here work can only start after other work.");
        }
        else if (link.Lag < 0)
        {
            reasons.Add($"The lag of {link.Lag} before '{to}' is negative; here a lag is 0 or more.");
        }
    }

    private static int Horizon(ActivityNetwork network, List<string> reasons)
    {
        // A network holds that durations and lags without their signs add up to less than 64 bits can.
        var span = network.Activities.Sum(activity => activity.Duration) + network.Links.Sum(link => Math.Abs(link.Lag));
        if (span > PackedProblem.LargestHorizon)
        {
            reasons.Add($"Durations and lags add up to {span}; at most {PackedProblem.LargestHorizon} can be scheduled. Use a coarser unit.");
            return 0;
        }

        return (int)span;
    }
}
