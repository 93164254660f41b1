using NodaTime;

namespace EpisodePlanner.Data;

/// <summary>How exactly moments are kept.</summary>
internal static class Moments
{
    /// <summary>The moment it is now, in whole milliseconds.</summary>
    public static Instant Now(this TimeProvider clock) =>
        Instant.FromUnixTimeMilliseconds(clock.GetUtcNow().ToUnixTimeMilliseconds());

    /// <summary>The minute that a moment lies in.</summary>
    public static Instant Minute(Instant moment)
    {
        var minutes = Math.DivRem(moment.ToUnixTimeSeconds(), 60, out var rest);
        return Instant.FromUnixTimeSeconds((rest < 0 ? minutes - 1 : minutes) * 60);
    }
}
