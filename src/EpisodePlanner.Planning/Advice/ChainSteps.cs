using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Planning;

/// <summary>One step of a chain that is told.</summary>
/// <param name="Link">The step.</param>
/// <param name="LeftOut">How many steps before it, on the way back in time, are not told.</param>
public sealed record ChainStep(ChainLink Link, int LeftOut);

/// <summary>
/// Tells a chain by what it waits for: stages of one task, or parts of one tail, that follow each other count as one
/// step, its earliest. A long chain is told by its first steps, its turning points and its beginning.
/// </summary>
public static class ChainSteps
{
    /// <summary>At most so many steps of a chain, in its order.</summary>
    /// <param name="chain">From the end back to what no other stage decides.</param>
    /// <param name="most">The most steps to tell, 5 or more.</param>
    public static ValueList<ChainStep> Of(IReadOnlyList<ChainLink> chain, int most = 6) => Shorten(Merge(chain), most);

    /// <summary>Whether two stretches belong to one task or to one episode's tail.</summary>
    public static bool AreOfOne(StageKey one, StageKey other) => one.Task == other.Task && one.Episode == other.Episode;

    private static List<ChainLink> Merge(IReadOnlyList<ChainLink> chain)
    {
        var steps = new List<ChainLink>();
        for (var i = 0; i < chain.Count; i++)
        {
            var goesOn = chain[i].Cause is { Kind: CauseKind.Predecessor, Stage: { } before }
                && i + 1 < chain.Count
                && before == chain[i + 1].Stage
                && AreOfOne(before, chain[i].Stage);
            if (!goesOn)
            {
                steps.Add(chain[i]);
            }
        }

        return steps;
    }

    private static ValueList<ChainStep> Shorten(List<ChainLink> chain, int most)
    {
        if (chain.Count <= most)
        {
            return chain.Select(link => new ChainStep(link, 0)).ToValueList();
        }

        var first = most / 2;
        var turning = Enumerable.Range(first, chain.Count - first - 1)
            .OrderByDescending(i => Minutes(chain, i))
            .ThenBy(i => i)
            .Take(most - first - 1);
        int[] told = [.. Enumerable.Range(0, first), .. turning.Order(), chain.Count - 1];
        return told.Select((at, i) => new ChainStep(chain[at], i == 0 ? 0 : at - told[i - 1] - 1)).ToValueList();
    }

    /// <summary>How much time a step accounts for: from its start back to the start of the step that it waits for.</summary>
    private static long Minutes(List<ChainLink> chain, int step) =>
        (long)(chain[step].Start - chain[step + 1].Start).TotalMinutes;
}
