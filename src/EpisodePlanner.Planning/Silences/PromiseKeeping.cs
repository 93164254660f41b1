using NodaTime;

namespace EpisodePlanner.Planning;

/// <summary>Upload days held against a promise.</summary>
/// <remarks>
/// <para>A promise of a longest silence is kept by an upload on its last day: n days after the upload before.</para>
/// <para>
/// A promise of n uploads a calendar month counts each month from the first full one: the month that begins on or after
/// the first upload. It is due on the month's last day and kept by the nth upload on or after the month's first day,
/// so a late upload settles the month it was late for as well as counting in its own.
/// </para>
/// <para>Upload days come in ascending order, each once, planned ones included for the future.</para>
/// </remarks>
public static class PromiseKeeping
{
    /// <summary>
    /// The last day within the promise: the due day of the first upload that is still to come; it may have passed. Null
    /// where nothing is out yet.
    /// </summary>
    /// <param name="uploads">Upload days.</param>
    /// <param name="promise">The promise.</param>
    public static LocalDate? DueBy(IReadOnlyList<LocalDate> uploads, Promise promise)
    {
        if (uploads.Count == 0)
        {
            return null;
        }

        return promise.UploadsPerMonth is { } each
            ? LastDay(Months(uploads).First(month => Nth(uploads, month, each) is null))
            : uploads[^1].PlusDays(LongestSilence(promise));
    }

    /// <summary>Each time the promise was or will be overrun, in order.</summary>
    /// <param name="uploads">Upload days.</param>
    /// <param name="promise">The promise.</param>
    /// <param name="through">The last day looked at; uploads after it are left out.</param>
    public static ValueList<Overrun> Overruns(IReadOnlyList<LocalDate> uploads, Promise promise, LocalDate through)
    {
        var seen = uploads.TakeWhile(day => day <= through).ToList();
        if (seen.Count == 0)
        {
            return [];
        }

        var overruns = promise.UploadsPerMonth is { } each
            ? Months(seen).TakeWhile(month => LastDay(month) < through)
                .Select(month => Late(LastDay(month), Nth(seen, month, each), through))
            : Silences.Past(seen, through)
                .Select(silence => Late(silence.From.PlusDays(LongestSilence(promise)), silence.To, through));
        return overruns.Where(overrun => overrun.Days > 0).ToValueList();
    }

    /// <summary>Days of a silence beyond a longest silence in days, 0 or more.</summary>
    public static int Beyond(Silence silence, int longest) => Math.Max(0, silence.Days - longest);

    private static Overrun Late(LocalDate due, LocalDate? kept, LocalDate through) =>
        new(due, kept, Math.Max(0, Period.DaysBetween(due, kept ?? through)));

    /// <summary>The first days of the months that count, without end.</summary>
    private static IEnumerable<LocalDate> Months(IReadOnlyList<LocalDate> uploads)
    {
        for (var month = FirstFullMonth(uploads[0]); ; month = month.PlusMonths(1))
        {
            yield return month;
        }
    }

    internal static LocalDate FirstFullMonth(LocalDate upload) =>
        upload.Day == 1 ? upload : upload.With(DateAdjusters.StartOfMonth).PlusMonths(1);

    private static LocalDate LastDay(LocalDate month) => month.With(DateAdjusters.EndOfMonth);

    /// <summary>The day of the nth upload on or after a month's first day, or null.</summary>
    private static LocalDate? Nth(IReadOnlyList<LocalDate> uploads, LocalDate month, int n)
    {
        var before = uploads.TakeWhile(day => day < month).Count();
        return before + n <= uploads.Count ? uploads[before + n - 1] : null;
    }

    private static int LongestSilence(Promise promise) => promise.LongestSilenceDays
        ?? throw new ArgumentException("A promise gives days or uploads a month.", nameof(promise));
}
