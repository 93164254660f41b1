using NodaTime;

namespace EpisodePlanner.Planning;

/// <summary>The silences between uploads, past and to come.</summary>
/// <remarks>
/// Upload days come in ascending order; several uploads on one day count once. The caller chooses whose: a series'
/// own days for the series, everybody's for the channel (<see cref="UploadDays"/>).
/// </remarks>
public static class Silences
{
    /// <summary>
    /// The silences so far, in order; the last is open and lasts until today. None where nothing is out.
    /// </summary>
    /// <param name="uploads">Upload days, ascending; those after today are left out.</param>
    /// <param name="today">The last day looked at.</param>
    public static ValueList<Silence> Past(IEnumerable<LocalDate> uploads, LocalDate today) =>
        Along(uploads.TakeWhile(day => day <= today), today);

    /// <summary>
    /// The silences to come, in order: from the last upload made through the planned ones; the last is open and lasts
    /// until the end of the forecast. Where nothing is out yet they begin with the first planned upload.
    /// </summary>
    /// <param name="last">The day of the last upload made, or null.</param>
    /// <param name="planned">Planned upload days, ascending; those beyond the end are left out.</param>
    /// <param name="through">The last day of the forecast.</param>
    public static ValueList<Silence> Forecast(LocalDate? last, IEnumerable<LocalDate> planned, LocalDate through)
    {
        IEnumerable<LocalDate> made = last is { } day ? [day] : [];
        return Along(made.Concat(planned).TakeWhile(date => date <= through), through);
    }

    private static ValueList<Silence> Along(IEnumerable<LocalDate> uploads, LocalDate through)
    {
        var silences = new List<Silence>();
        LocalDate? from = null;
        foreach (var day in uploads)
        {
            if (from is { } before && before < day)
            {
                silences.Add(new Silence(before, day, Period.DaysBetween(before, day)));
            }

            from = day;
        }

        if (from is { } last)
        {
            silences.Add(new Silence(last, null, Period.DaysBetween(last, through)));
        }

        return silences.ToValueList();
    }
}
