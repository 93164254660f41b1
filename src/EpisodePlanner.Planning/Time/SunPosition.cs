using NodaTime;

namespace EpisodePlanner.Planning;

/// <summary>Where the sun stands at one moment, as far as sunrise and sunset need it.</summary>
/// <param name="Declination">Degrees north of the celestial equator.</param>
/// <param name="EquationOfTime">Minutes by which a sundial is ahead of mean time.</param>
/// <remarks>
/// Source: NOAA Global Monitoring Laboratory, "Solar Calculation Details", the published worksheet; its column names
/// are the method names here. Angles are in degrees, <c>t</c> in Julian centuries since noon of 1 January 2000.
/// </remarks>
internal readonly record struct SunPosition(double Declination, double EquationOfTime)
{
    private const double DaysACentury = 36_525;

    /// <summary>The sun at a moment.</summary>
    public static SunPosition At(Instant moment)
    {
        var t = ((moment - NodaConstants.UnixEpoch).TotalDays - 10_957.5) / DaysACentury;
        var obliquity = Obliquity(t);
        var declination = Degrees(Math.Asin(Sine(obliquity) * Sine(ApparentLongitude(t))));
        return new SunPosition(declination, Equation(t, obliquity));
    }

    /// <summary>Degrees above the horizon at noon.</summary>
    public double ElevationAtNoon(double latitude) => 90 - Math.Abs(latitude - Declination);

    private static double MeanLongitude(double t) => (280.46646 + (t * (36_000.76983 + (t * 0.0003032)))) % 360;

    private static double MeanAnomaly(double t) => 357.52911 + (t * (35_999.05029 - (0.0001537 * t)));

    private static double Eccentricity(double t) => 0.016708634 - (t * (0.000042037 + (0.0000001267 * t)));

    private static double EquationOfCentre(double t)
    {
        var anomaly = MeanAnomaly(t);
        return (Sine(anomaly) * (1.914602 - (t * (0.004817 + (0.000014 * t)))))
            + (Sine(2 * anomaly) * (0.019993 - (0.000101 * t)))
            + (Sine(3 * anomaly) * 0.000289);
    }

    private static double Ascending(double t) => 125.04 - (1_934.136 * t);

    private static double ApparentLongitude(double t) =>
        MeanLongitude(t) + EquationOfCentre(t) - 0.00569 - (0.00478 * Sine(Ascending(t)));

    private static double Obliquity(double t)
    {
        var seconds = 21.448 - (t * (46.815 + (t * (0.00059 - (t * 0.001813)))));
        return 23 + ((26 + (seconds / 60)) / 60) + (0.00256 * Math.Cos(double.DegreesToRadians(Ascending(t))));
    }

    private static double Equation(double t, double obliquity)
    {
        var y = Math.Pow(Math.Tan(double.DegreesToRadians(obliquity / 2)), 2);
        var (longitude, anomaly, e) = (MeanLongitude(t), MeanAnomaly(t), Eccentricity(t));
        var radians = (y * Sine(2 * longitude))
            - (2 * e * Sine(anomaly))
            + (4 * e * y * Sine(anomaly) * Math.Cos(double.DegreesToRadians(2 * longitude)))
            - (0.5 * y * y * Sine(4 * longitude))
            - (1.25 * e * e * Sine(2 * anomaly));
        return 4 * Degrees(radians);
    }

    private static double Sine(double degrees) => Math.Sin(double.DegreesToRadians(degrees));

    private static double Degrees(double radians) => double.RadiansToDegrees(radians);
}
