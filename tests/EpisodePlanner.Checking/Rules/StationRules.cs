namespace EpisodePlanner.Checking;

/// <summary>A station is taken by one stage at a time.</summary>
internal static class StationRules
{
    public static void Check(Findings findings)
    {
        var takings = new List<Taking>();
        for (var stage = 0; stage < findings.WellFormed.Length; stage++)
        {
            if (findings.WellFormed[stage])
                Takings.AddTo(takings, findings.Problem, stage, findings.Schedule.Parts(stage));
        }

        foreach (var station in takings.GroupBy(t => t.Station).OrderBy(g => g.Key))
            CheckStation(findings, [.. station.OrderBy(t => t.Start).ThenBy(t => t.End)]);
    }

    private static void CheckStation(Findings findings, Taking[] takings)
    {
        var latest = takings[0];
        foreach (var next in takings.Skip(1))
        {
            if (next.Start < latest.End && next.Stage != latest.Stage)
                Report(findings, latest, next);

            if (next.End > latest.End)
                latest = next;
        }
    }

    private static void Report(Findings findings, Taking holder, Taking next) => findings.Add(
        next.Stage,
        $"takes {findings.Problem.Stations[next.Station].Name} at {next.Start} while "
        + $"'{findings.Problem.Stages[holder.Stage].Name}' has it until {holder.End}");
}
