using System.Collections.Immutable;

namespace EpisodePlanner.Planning;

/// <summary>Whether several promises can hold on one sequence of slots.</summary>
public abstract record PinwheelResult
{
    private PinwheelResult()
    {
    }

    /// <summary>They can.</summary>
    /// <param name="Rotation">Whose turn each slot is, by index into the intervals; repeated for ever it keeps them all.</param>
    public sealed record Holds(ImmutableArray<int> Rotation) : PinwheelResult;

    /// <summary>They can't, whatever is done.</summary>
    public sealed record Impossible : PinwheelResult;

    /// <summary>Neither a rotation nor a proof was found within the limit.</summary>
    public sealed record Unknown : PinwheelResult;
}

/// <summary>
/// Pinwheel scheduling: one slot after the other, each given to one of several, so that number i gets at least one of any
/// a<sub>i</sub> slots in a row.
/// </summary>
/// <remarks>
/// R. Holte et al., "The pinwheel: a real-time scheduling problem", HICSS 1989. Where the sum of 1/a is above 1 it is
/// impossible; where it is at most 5/6 there is always a way (A. Kawamura, STOC 2024). In between, and to find the
/// rotation, harmonic intervals are tried first (M. Y. Chan and F. Chin, "Schedulers for larger classes of pinwheel
/// instances", Algorithmica 9, 1993), then every state is searched.
/// </remarks>
public static class Pinwheel
{
    /// <summary>How many states a search may meet where nobody says.</summary>
    public const int UsualStates = 1_000_000;

    /// <summary>Looks for a rotation.</summary>
    /// <param name="intervals">At least one of so many slots in a row, each 1 or more.</param>
    /// <param name="mostStates">How many states may be met before the search gives up.</param>
    /// <exception cref="ArgumentOutOfRangeException">An interval is less than 1.</exception>
    public static PinwheelResult Solve(IReadOnlyList<int> intervals, int mostStates = UsualStates)
    {
        foreach (var interval in intervals)
        {
            ArgumentOutOfRangeException.ThrowIfLessThan(interval, 1, nameof(intervals));
        }

        if (IsDense(intervals))
        {
            return new PinwheelResult.Impossible();
        }

        return intervals.Count == 0
            ? new PinwheelResult.Holds([])
            : HarmonicRotation.Of(intervals) is { } rotation
                ? new PinwheelResult.Holds(rotation)
                : new PinwheelSearch(intervals, mostStates).Run();
    }

    /// <summary>Whether a rotation, repeated for ever, keeps every interval.</summary>
    public static bool Keeps(IReadOnlyList<int> rotation, IReadOnlyList<int> intervals)
    {
        if (rotation.Count == 0)
        {
            return intervals.Count == 0;
        }

        for (var i = 0; i < intervals.Count; i++)
        {
            var places = Enumerable.Range(0, rotation.Count).Where(place => rotation[place] == i).ToList();
            if (places.Count == 0)
            {
                return false;
            }

            var gaps = places.Select((place, k) => k + 1 < places.Count ? places[k + 1] - place : places[0] + rotation.Count - place);
            if (gaps.Max() > intervals[i])
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>Whether more than every slot would be needed: the sum of 1/a above 1, counted in whole numbers.</summary>
    private static bool IsDense(IReadOnlyList<int> intervals)
    {
        var (numerator, denominator) = (System.Numerics.BigInteger.Zero, System.Numerics.BigInteger.One);
        foreach (var interval in intervals)
        {
            (numerator, denominator) = ((numerator * interval) + denominator, denominator * interval);
        }

        return numerator > denominator;
    }
}
