using System.Collections.Immutable;

namespace EpisodePlanner.Planning;

/// <summary>
/// Shortens intervals to a base times powers of two; these fit together without gaps wherever they need no more than
/// every slot.
/// </summary>
internal static class HarmonicRotation
{
    private const int LongestRotation = 4096;

    /// <summary>A rotation for shortened intervals, which keeps the given ones too; null where no base fits.</summary>
    public static ImmutableArray<int>? Of(IReadOnlyList<int> intervals)
    {
        for (var first = 1; first <= intervals.Min(); first++)
        {
            var shortened = intervals.Select(interval => Shortened(interval, first)).ToArray();
            if (shortened.Max() <= LongestRotation && shortened.Sum(interval => shortened.Max() / interval) <= shortened.Max())
            {
                return Filled(shortened);
            }
        }

        return null;
    }

    /// <summary>The greatest of first, 2·first, 4·first … that is no more than the interval.</summary>
    private static int Shortened(int interval, int first)
    {
        var result = first;
        while (result <= interval / 2)
        {
            result *= 2;
        }

        return result;
    }

    /// <summary>
    /// The shortest interval first takes the first free slot and every so manieth after it: shorter intervals divide longer
    /// ones, so that these are free too. Slots that nobody needs go to the first.
    /// </summary>
    private static ImmutableArray<int> Filled(int[] intervals)
    {
        var rotation = new int[intervals.Max()];
        rotation.AsSpan().Fill(-1);
        foreach (var i in Enumerable.Range(0, intervals.Length).OrderBy(i => intervals[i]).ThenBy(i => i))
        {
            for (var place = Array.IndexOf(rotation, -1); place < rotation.Length; place += intervals[i])
            {
                rotation[place] = i;
            }
        }

        return [.. rotation.Select(turn => Math.Max(0, turn))];
    }
}
