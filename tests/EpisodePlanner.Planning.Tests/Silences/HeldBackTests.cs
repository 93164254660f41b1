namespace EpisodePlanner.Planning.Tests;

/// <summary>Source: brute force over every way of holding episodes back, day by day.</summary>
public sealed class HeldBackTests
{
    private const int Through = 400;

    // The open end weighs as much as an open end can.
    private const int Tail = 900;

    [Fact]
    public void Weight_Gorse_HoldsTheFirstEpisodeBack()
    {
        // Possible on days 13 and 38 with a promise of 21: as they are 0 and 4 over, even 19 and 19.
        Assert.Equal(Tail, HeldBack.Weight(0, [13, 38], 21, Through));
        Assert.Equal(16 + Tail, SilencePenalty.OfDays(0, [13, 38], 21, Through));
    }

    [Fact]
    public void Weight_ShortDays_IsTheLeastOfAllWaysToHoldBack()
    {
        var state = 12345u;
        for (var round = 0; round < 400; round++)
        {
            var days = new[] { Next(ref state, 60), Next(ref state, 60), Next(ref state, 60) }.Order().ToArray();
            var longest = 1 + Next(ref state, 8);

            Assert.Equal(BruteForce(0, days, longest), HeldBack.Weight(0, days, longest, Through));
        }
    }

    [Fact]
    public void Weight_LaterReady_IsNeverLess()
    {
        var state = 99u;
        for (var round = 0; round < 400; round++)
        {
            var days = new[] { Next(ref state, 20), Next(ref state, 20), Next(ref state, 20), Next(ref state, 20) }.Order().ToArray();
            var later = days.ToArray();
            later[Next(ref state, 4)] += 1 + Next(ref state, 5);
            later = [.. later.Order()];

            Assert.True(HeldBack.Weight(0, later, 4, Through) >= HeldBack.Weight(0, days, 4, Through), string.Join(",", days));
        }
    }

    // The last episode is not held.
    private static long BruteForce(int last, int[] days, int longest) => days.Length switch
    {
        0 => Tail,
        1 => SilencePenalty.Weight(days[0] - last - longest) + Tail,
        _ => Enumerable.Range(days[0], days[^1] - days[0] + 1)
            .Min(day => SilencePenalty.Weight(day - last - longest) + BruteForce(day, [.. days[1..].Select(next => Math.Max(next, day))], longest)),
    };

    private static int Next(ref uint state, int below)
    {
        unchecked
        {
            state = (state * 1664525) + 1013904223;
        }

        return (int)((state >> 8) % (uint)below);
    }
}
