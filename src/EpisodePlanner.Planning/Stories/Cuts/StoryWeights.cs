namespace EpisodePlanner.Planning;

/// <summary>
/// What a story over all series is judged by, in this order; less is better. It is the objective of a plan with the slots
/// that were chosen, instead of with the first that are free.
/// </summary>
/// <param name="Unpublished">Episodes without a slot.</param>
/// <param name="LateMinutes">Minutes by which told dates, needed-by dates and pinned slots are missed.</param>
/// <param name="Silence">Sum of squares of days of silence beyond promises, a line after 30 days.</param>
/// <param name="Moves">Stages that leave the accepted start of the next seven days.</param>
/// <param name="EndMinute">The end of the work: every cut costs a tail.</param>
/// <param name="Days">Sum of the days until the episodes are out.</param>
public readonly record struct StoryWeights(
    int Unpublished, long LateMinutes, long Silence, long Moves, long EndMinute, long Days) : IComparable<StoryWeights>
{
    /// <summary>Whether the first weighs less.</summary>
    public static bool operator <(StoryWeights left, StoryWeights right) => left.CompareTo(right) < 0;

    /// <summary>Whether the first weighs more.</summary>
    public static bool operator >(StoryWeights left, StoryWeights right) => left.CompareTo(right) > 0;

    /// <summary>Whether the first weighs no more.</summary>
    public static bool operator <=(StoryWeights left, StoryWeights right) => left.CompareTo(right) <= 0;

    /// <summary>Whether the first weighs no less.</summary>
    public static bool operator >=(StoryWeights left, StoryWeights right) => left.CompareTo(right) >= 0;

    /// <inheritdoc/>
    public int CompareTo(StoryWeights other) => (Unpublished, LateMinutes, Silence, Moves, EndMinute, Days)
        .CompareTo((other.Unpublished, other.LateMinutes, other.Silence, other.Moves, other.EndMinute, other.Days));
}
