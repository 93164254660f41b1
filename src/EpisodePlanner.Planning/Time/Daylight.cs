using EpisodePlanner.Scheduling;
using NodaTime;

namespace EpisodePlanner.Planning;

/// <summary>
/// Sunrise and sunset of one solar day: both moments, or neither where the sun stays up or down.
/// </summary>
/// <param name="Sunrise">When the sun's upper edge rises, or null.</param>
/// <param name="Sunset">When it sets, or null.</param>
/// <param name="AlwaysUp">Whether the sun stays up all day.</param>
public readonly record struct SunDay(Instant? Sunrise, Instant? Sunset, bool AlwaysUp);

/// <summary>Daylight by date and coordinates.</summary>
/// <remarks>
/// The equations of NOAA's Global Monitoring Laboratory, "Solar Calculation Details" (after Meeus, Astronomical
/// Algorithms), with a zenith of 90.833° for refraction and the sun's radius: within a minute or two between 72° north
/// and south, within ten beyond. Hills and heights are not seen.
/// </remarks>
public static class Daylight
{
    private const double Zenith = 90.833;
    private const double MinutesADay = 1_440;

    /// <summary>
    /// Sunrise and sunset around the noon of a date, the date counted by the sun of the place's own longitude; that is
    /// the local date except where a zone keeps the date of the other side of the date line.
    /// </summary>
    /// <param name="date">The date.</param>
    /// <param name="latitude">Degrees north, −90 to 90.</param>
    /// <param name="longitude">Degrees east, −180 to 180.</param>
    public static SunDay On(LocalDate date, double latitude, double longitude)
    {
        var midnight = date.AtMidnight().InUtc().ToInstant();
        var noon = Noon(midnight, longitude);
        var half = HalfDay(At(midnight, noon), latitude);
        if (double.IsNaN(half))
        {
            return new SunDay(null, null, At(midnight, noon).ElevationAtNoon(latitude) > 90 - Zenith);
        }

        var rise = noon - Refined(midnight, noon - half, latitude, half);
        var set = noon + Refined(midnight, noon + half, latitude, half);
        return new SunDay(After(midnight, rise), After(midnight, set), false);
    }

    /// <summary>When it is light at a place, from sunrise to sunset, clipped to the plan.</summary>
    /// <param name="latitude">Degrees north, −90 to 90.</param>
    /// <param name="longitude">Degrees east, −180 to 180.</param>
    /// <param name="axis">The plan's axis.</param>
    public static IntervalCalendar Calendar(double latitude, double longitude, TimeAxis axis)
    {
        var spans = new AxisSpans(axis);
        var last = axis.DateOf(axis.Horizon).PlusDays(1);
        for (var date = axis.DateOf(0).PlusDays(-1); date <= last; date = date.PlusDays(1))
        {
            AddDaylight(spans, date, latitude, longitude, axis);
        }

        return spans.ToCalendar();
    }

    private static void AddDaylight(AxisSpans spans, LocalDate date, double latitude, double longitude, TimeAxis axis)
    {
        var sun = On(date, latitude, longitude);
        if (sun is { Sunrise: { } rise, Sunset: { } set })
        {
            spans.Add(axis.MinuteOf(rise), axis.MinuteOf(set));
        }
        else if (sun.AlwaysUp)
        {
            // A solar day lasts up to half a minute more than 24 hours, so neighbours must overlap.
            var noon = axis.MinuteOf(After(date.AtMidnight().InUtc().ToInstant(), 720 - (4 * longitude)));
            spans.Add(noon - 721, noon + 721);
        }
    }

    private static SunPosition At(Instant midnight, double minute) => SunPosition.At(After(midnight, minute));

    /// <summary>Minutes from a date's midnight UTC to the sun's noon at a longitude.</summary>
    private static double Noon(Instant midnight, double longitude)
    {
        var mean = 720 - (4 * longitude);
        return mean - At(midnight, mean).EquationOfTime;
    }

    /// <summary>
    /// Half the day's length with the declination of the event itself; the first value where that fails.
    /// </summary>
    private static double Refined(Instant midnight, double minute, double latitude, double first)
    {
        var half = HalfDay(At(midnight, minute), latitude);
        return double.IsNaN(half) ? first : half;
    }

    /// <summary>Minutes from noon to sunset; NaN where the sun does not set or does not rise.</summary>
    private static double HalfDay(SunPosition sun, double latitude)
    {
        var (here, there) = (double.DegreesToRadians(latitude), double.DegreesToRadians(sun.Declination));
        var cosine = (Math.Cos(double.DegreesToRadians(Zenith)) - (Math.Sin(here) * Math.Sin(there)))
            / (Math.Cos(here) * Math.Cos(there));
        return double.RadiansToDegrees(Math.Acos(cosine)) / 360 * MinutesADay;
    }

    private static Instant After(Instant midnight, double minutes) => midnight + Duration.FromMinutes(minutes);
}
