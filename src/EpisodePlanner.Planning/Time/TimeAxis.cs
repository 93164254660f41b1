using EpisodePlanner.Scheduling;
using NodaTime;

namespace EpisodePlanner.Planning;

/// <summary>
/// The line of whole minutes on which a plan is made: minute 0 is the planned-at moment, minutes before it are
/// negative. Turns moments and local times into minutes and back. Immutable.
/// </summary>
/// <remarks>
/// Every conversion floors to the minute. Moments further than <see cref="Furthest"/> minutes away count as that far,
/// so that a date of the year 9999 is simply very late.
/// </remarks>
public sealed class TimeAxis
{
    /// <summary>The furthest minute on either side, about 1,900 years; leaves room for sums in an int.</summary>
    public const int Furthest = 1_000_000_000;

    /// <summary>An axis.</summary>
    /// <param name="plannedAt">The moment of minute 0; seconds and less are dropped, towards the past.</param>
    /// <param name="zone">The zone in which local times are read.</param>
    /// <param name="horizon">
    /// The minute before which the plan must fit, 0 to <see cref="IntervalCalendar.MaximumMinute"/>.
    /// </param>
    /// <exception cref="ArgumentOutOfRangeException">The horizon is outside its range.</exception>
    public TimeAxis(Instant plannedAt, DateTimeZone zone, int horizon)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(horizon);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(horizon, IntervalCalendar.MaximumMinute);
        PlannedAt = Instant.FromUnixTimeSeconds(FloorDivide(plannedAt.ToUnixTimeSeconds(), 60) * 60);
        Zone = zone;
        Horizon = horizon;
        Days = new LocalDays(this);
    }

    /// <summary>The moment of minute 0, on a whole minute.</summary>
    public Instant PlannedAt { get; }

    /// <summary>The zone in which local times are read.</summary>
    public DateTimeZone Zone { get; }

    /// <summary>The first minute beyond the plan.</summary>
    public int Horizon { get; }

    /// <summary>The local days that touch the plan, converted once.</summary>
    public LocalDays Days { get; }

    /// <summary>The minute in which a moment lies.</summary>
    public int MinuteOf(Instant moment)
    {
        var seconds = moment.ToUnixTimeSeconds() - PlannedAt.ToUnixTimeSeconds();
        return (int)Math.Clamp(FloorDivide(seconds, 60), -Furthest, Furthest);
    }

    /// <summary>
    /// The minute of a local time after RFC 5545 §3.3.5: a time that does not exist is read with the offset before the
    /// gap, one that occurs twice means the first.
    /// </summary>
    public int MinuteOf(LocalDateTime local) => MinuteOf(Resolve(local, Zone));

    /// <summary>The minute at which a local day begins.</summary>
    public int MinuteOf(LocalDate day) => MinuteOf(StartOf(day, Zone));

    /// <summary>The moment of a minute.</summary>
    public Instant MomentOf(int minute) => PlannedAt + Duration.FromMinutes(minute);

    /// <summary>The local time of a minute, with its offset.</summary>
    public ZonedDateTime LocalOf(int minute) => MomentOf(minute).InZone(Zone);

    /// <summary>The local date of a minute.</summary>
    public LocalDate DateOf(int minute) => LocalOf(minute).Date;

    /// <summary>The moment of a local time in any zone, after RFC 5545 §3.3.5.</summary>
    public static Instant Resolve(LocalDateTime local, DateTimeZone zone)
    {
        var mapping = zone.MapLocal(local);
        return mapping.Count == 0
            ? local.WithOffset(mapping.EarlyInterval.WallOffset).ToInstant()
            : mapping.First().ToInstant();
    }

    /// <summary>
    /// The moment at which a local day begins; of a day that the zone left out, the moment it was left out.
    /// </summary>
    public static Instant StartOf(LocalDate day, DateTimeZone zone)
    {
        var mapping = zone.MapLocal(day.AtMidnight());
        return mapping.Count == 0 ? mapping.LateInterval.Start : mapping.First().ToInstant();
    }

    private static long FloorDivide(long value, long divisor) =>
        (value / divisor) - (value % divisor < 0 ? 1 : 0);
}
