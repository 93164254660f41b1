using EpisodePlanner.Scheduling.Engine;
using EpisodePlanner.Scheduling.Lists;

namespace EpisodePlanner.Scheduling;

/// <summary>How long the items of a bench problem take its stations, and how many of them.</summary>
internal static class BenchUse
{
    /// <summary>By item: minutes, and the share of all stations in parts of <see cref="WindowCrossover.Whole"/>.</summary>
    public static (int[] Durations, int[] Use) Of(CompiledProblem compiled)
    {
        var (durations, use) = (new int[compiled.ItemCount], new int[compiled.ItemCount]);
        var share = WindowCrossover.Whole / Math.Max(1, compiled.Problem.Stations.Count);
        for (var stage = 0; stage < compiled.StageCount; stage++)
        {
            var mode = compiled.Modes[stage][0];
            durations[stage] = Math.Min(compiled.Minutes[stage], compiled.Problem.Horizon);
            use[stage] = share * (mode.Machine >= 0 ? 1 : mode.All.Length);
            if (compiled.UnloadItem[stage] is >= 0 and var unload)
            {
                durations[unload] = compiled.Problem.Stages[stage].UnloadMinutes;
                use[unload] = share * mode.All.Length;
            }
        }

        return (durations, use);
    }
}
