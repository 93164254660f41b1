namespace EpisodePlanner.Checking;

/// <summary>The order of placing names every placed stage once.</summary>
internal static class OrderRules
{
    public static void Check(Findings findings)
    {
        var named = new int[findings.Problem.Stages.Count];
        foreach (var stage in findings.Schedule.Order)
            named[stage]++;

        for (var stage = 0; stage < named.Length; stage++)
        {
            if (named[stage] != (findings.Schedule.IsPlaced(stage) ? 1 : 0))
                findings.Add(stage, $"is named {named[stage]} times in the order of placing");
        }
    }
}
