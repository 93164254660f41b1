namespace EpisodePlanner.Planning;

/// <summary>How long a stage takes, as the plan counts it.</summary>
/// <param name="Minutes">
/// Its planning value: the mean, in whole minutes; work of an attended stage, machine time of a run, elapsed time of a
/// wait, minutes of business days of a wait that counts them.
/// </param>
/// <param name="FitMinutes">The length it keeps nine times out of ten; never below <paramref name="Minutes"/>.</param>
/// <param name="RangeAssumed">Whether an end of its range was assumed.</param>
/// <param name="OnBusinessDays">
/// Whether the minutes are those of business days, <see cref="HoursCalendar.BusinessDays"/>.
/// </param>
/// <param name="Hours">Its distribution, in hours.</param>
public sealed record StageEstimate(
    int Minutes, int FitMinutes, bool RangeAssumed, bool OnBusinessDays, BetaPert Hours);
