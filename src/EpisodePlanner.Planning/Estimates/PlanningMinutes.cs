namespace EpisodePlanner.Planning;

/// <summary>Turns lengths into the whole minutes a plan counts with.</summary>
/// <remarks>
/// A length is rounded to a tenth of a minute, halves away from zero, and then up to the minute: results of maths
/// libraries that differ in their last bits give the same plan.
/// </remarks>
public static class PlanningMinutes
{
    /// <summary>The whole minutes of a length.</summary>
    /// <param name="minutes">The length in minutes, 0 to 60 million.</param>
    public static int Of(double minutes) => FromTenths((long)Math.Round(minutes * 10, MidpointRounding.AwayFromZero));

    /// <summary>The whole minutes of a length, exactly.</summary>
    /// <param name="minutes">The length in minutes, 0 to 60 million.</param>
    public static int Of(decimal minutes) => FromTenths((long)Math.Round(minutes * 10, MidpointRounding.AwayFromZero));

    private static int FromTenths(long tenths) => (int)((tenths + 9) / 10);
}
