using NodaTime;

namespace EpisodePlanner.Planning;

/// <summary>
/// What silences beyond a promise weigh in a plan: the sum of the squares of the days beyond. After <see cref="MostDays"/>
/// the square is flattened to a line: a day more weighs what the last of them weighed. The open end, up to the last day of
/// the plan, counts as at most <see cref="MostDays"/>.
/// </summary>
/// <remarks>
/// A weight that stayed the same after <see cref="MostDays"/> would make one endless silence better than two long ones, and a
/// plan would let what is ready wait for what is not. The open end is another thing: nothing is planned after it, so there is
/// nothing to put off.
/// Over day numbers (<see cref="DayNumber(LocalDate)"/>) and without allocation, for the many schedules that a search
/// compares. It says the same as the weight of <see cref="PromiseKeeping.Overruns"/>.
/// </remarks>
public static class SilencePenalty
{
    /// <summary>Days beyond a promise after which the square goes on as a line.</summary>
    public const int MostDays = 30;

    private static readonly LocalDate Epoch = new(1970, 1, 1);

    /// <summary>The number of a day: days since 1 January 1970.</summary>
    public static int DayNumber(LocalDate day) => Period.DaysBetween(Epoch, day);

    /// <summary>What a day more weighs after <see cref="MostDays"/>.</summary>
    public const int PerDayMore = 2 * MostDays;

    /// <summary>The weight of a silence that an upload ends: 0 where it is not beyond its promise.</summary>
    public static long Weight(int beyond) => OpenWeight(beyond) + (PerDayMore * Math.Max(0L, (long)beyond - MostDays));

    /// <summary>The weight of a silence that no upload ends: at most the square of <see cref="MostDays"/>.</summary>
    public static int OpenWeight(int beyond)
    {
        var days = Math.Clamp(beyond, 0, MostDays);
        return days * days;
    }

    /// <summary>The weight of overruns.</summary>
    public static long Of(IEnumerable<Overrun> overruns) =>
        overruns.Sum(overrun => overrun.Kept is null ? OpenWeight(overrun.Days) : Weight(overrun.Days));

    /// <summary>The weight under a promise of a longest silence.</summary>
    /// <param name="last">The day of the last upload made; silence counts from it.</param>
    /// <param name="planned">Planned upload days, ascending, may repeat; those beyond the end don't count.</param>
    /// <param name="longest">The longest silence promised, days.</param>
    /// <param name="through">The last day of the plan.</param>
    public static long OfDays(int last, ReadOnlySpan<int> planned, int longest, int through)
    {
        var total = 0L;
        var from = last;
        foreach (var day in planned)
        {
            if (day > through)
            {
                break;
            }

            total += Weight(day - from - longest);
            from = Math.Max(from, day);
        }

        return total + OpenWeight(through - from - longest);
    }

    /// <summary>The weight under a promise of uploads a calendar month.</summary>
    /// <param name="uploads">Upload days, ascending, each once; those beyond the end don't count.</param>
    /// <param name="each">The uploads promised for each month, 1 or more.</param>
    /// <param name="months">The first days of the months that count and of the one after: <see cref="Months"/>.</param>
    /// <param name="through">The last day of the plan.</param>
    public static long OfMonths(ReadOnlySpan<int> uploads, int each, ReadOnlySpan<int> months, int through)
    {
        var total = 0L;
        var before = 0;
        for (var i = 0; i + 1 < months.Length; i++)
        {
            for (; before < uploads.Length && uploads[before] < months[i]; before++)
            {
            }

            var nth = before + each - 1;
            var due = months[i + 1] - 1;
            total += nth < uploads.Length && uploads[nth] <= through ? Weight(uploads[nth] - due) : OpenWeight(through - due);
        }

        return total;
    }

    /// <summary>
    /// The first days of the months that count under a promise by the month, from the first full one to the last that
    /// ends before the end of the plan, and of the month after that.
    /// </summary>
    /// <param name="firstUpload">The day of the series' first upload.</param>
    /// <param name="through">The last day of the plan.</param>
    public static int[] Months(LocalDate firstUpload, LocalDate through)
    {
        var starts = new List<int>();
        for (var month = PromiseKeeping.FirstFullMonth(firstUpload); month <= through; month = month.PlusMonths(1))
        {
            starts.Add(DayNumber(month));
        }

        return [.. starts];
    }
}
