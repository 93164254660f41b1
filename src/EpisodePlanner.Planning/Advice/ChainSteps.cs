namespace EpisodePlanner.Planning;

/// <summary>One step of a chain that is told.</summary>
/// <param name="Link">The step.</param>
/// <param name="LeftOut">How many steps before it, on the way back in time, are not told.</param>
public sealed record ChainStep(ChainLink Link, int LeftOut);

/// <summary>Tells a long chain by its first steps, its turning points and its beginning.</summary>
public static class ChainSteps
{
    private const int First = 3;

    /// <summary>At most so many steps of a chain, in its order.</summary>
    /// <param name="chain">From the end back to what no other stage decides.</param>
    /// <param name="most">The most steps to tell, 5 or more.</param>
    public static ValueList<ChainStep> Of(IReadOnlyList<ChainLink> chain, int most = 6)
    {
        if (chain.Count <= most)
        {
            return chain.Select(link => new ChainStep(link, 0)).ToValueList();
        }

        var turning = Enumerable.Range(First, chain.Count - First - 1)
            .OrderByDescending(i => Minutes(chain, i))
            .ThenBy(i => i)
            .Take(most - First - 1);
        int[] told = [.. Enumerable.Range(0, First), .. turning.Order(), chain.Count - 1];
        return told.Select((at, i) => new ChainStep(chain[at], i == 0 ? 0 : at - told[i - 1] - 1)).ToValueList();
    }

    /// <summary>How much time a step accounts for: from its start back to the start of the step that it waits for.</summary>
    private static long Minutes(IReadOnlyList<ChainLink> chain, int step) =>
        (long)(chain[step].Start - chain[step + 1].Start).TotalMinutes;
}
