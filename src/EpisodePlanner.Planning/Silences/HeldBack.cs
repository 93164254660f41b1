namespace EpisodePlanner.Planning;

/// <summary>
/// What silences beyond a promise weigh where an episode that is ready may be held back for a later day. With it a plan
/// never gains by getting an episode ready later: holding it back does the same.
/// </summary>
/// <remarks>
/// The days on which episodes could be out are lower bounds of the partial sums of the gaps; the sum of a convex function
/// of the gaps is least along the least concave majorant of these bounds, so between two of its corners the gaps are as
/// equal as whole days allow. The last episode is not held: after it nothing is planned.
/// </remarks>
public static class HeldBack
{
    private const int OnStack = 256;

    /// <summary>The weight, up to the last day of the plan, as <see cref="SilencePenalty.OfDays"/> counts it.</summary>
    /// <param name="last">The day number of the last upload made.</param>
    /// <param name="possible">The days on which episodes could be out, ascending.</param>
    /// <param name="longest">The longest silence promised, days.</param>
    /// <param name="through">The last day of the plan.</param>
    public static long Weight(int last, ReadOnlySpan<int> possible, int longest, int through)
    {
        var size = possible.Length + 1;
        var days = size <= OnStack ? stackalloc int[size] : new int[size];
        days[0] = last;
        possible.CopyTo(days[1..]);
        for (var i = 1; i < size; i++)
        {
            days[i] = Math.Clamp(days[i], days[i - 1], Math.Max(days[i - 1], through));
        }

        var corners = size <= OnStack ? stackalloc int[size] : new int[size];
        var count = Majorant(days, corners);
        var total = 0L;
        for (var c = 1; c < count; c++)
        {
            total += Least(days[corners[c - 1]..(corners[c] + 1)], longest);
        }

        return total + SilencePenalty.OpenWeight(through - days[^1] - longest);
    }

    /// <summary>The corners of the least concave majorant of days over their index.</summary>
    private static int Majorant(ReadOnlySpan<int> days, Span<int> corners)
    {
        var count = 0;
        for (var i = 0; i < days.Length; i++)
        {
            while (count > 1 && IsBelow(days, corners[count - 2], corners[count - 1], i))
            {
                count--;
            }

            corners[count++] = i;
        }

        return count;
    }

    private static bool IsBelow(ReadOnlySpan<int> days, int left, int middle, int right) =>
        (long)(days[middle] - days[left]) * (right - middle) <= (long)(days[right] - days[middle]) * (middle - left);

    /// <summary>The weight of the gaps between two corners, made as even as whole days allow.</summary>
    private static long Least(ReadOnlySpan<int> days, int longest)
    {
        var gaps = days.Length - 1;
        var (whole, more) = Math.DivRem(days[^1] - days[0], gaps);
        return (more * SilencePenalty.Weight(whole + 1 - longest)) + ((gaps - more) * SilencePenalty.Weight(whole - longest));
    }
}
