namespace EpisodePlanner.Planning;

/// <summary>What a choice of slots is judged by, in this order; less is better.</summary>
/// <param name="Unpublished">Episodes without a slot.</param>
/// <param name="LateMinutes">Minutes by which told dates and pinned slots are missed.</param>
/// <param name="Silence">Weight of the days beyond promises, as <see cref="SilencePenalty"/> counts them.</param>
/// <param name="Days">Sum of the days from the last upload's until each is out: of two choices the earlier.</param>
public readonly record struct SlotWeights(int Unpublished, long LateMinutes, long Silence, long Days) : IComparable<SlotWeights>
{
    /// <inheritdoc/>
    public int CompareTo(SlotWeights other) =>
        (Unpublished, LateMinutes, Silence, Days).CompareTo((other.Unpublished, other.LateMinutes, other.Silence, other.Days));

    /// <summary>Whether the first weighs less.</summary>
    public static bool operator <(SlotWeights left, SlotWeights right) => left.CompareTo(right) < 0;

    /// <summary>Whether the first weighs more.</summary>
    public static bool operator >(SlotWeights left, SlotWeights right) => left.CompareTo(right) > 0;

    /// <summary>Whether the first weighs no more.</summary>
    public static bool operator <=(SlotWeights left, SlotWeights right) => left.CompareTo(right) <= 0;

    /// <summary>Whether the first weighs no less.</summary>
    public static bool operator >=(SlotWeights left, SlotWeights right) => left.CompareTo(right) >= 0;

    /// <summary>Weighs a choice.</summary>
    /// <param name="question">The question.</param>
    /// <param name="windows">By episode: its window, by index; −1 for none.</param>
    public static SlotWeights Of(SlotQuestion question, ReadOnlySpan<int> windows)
    {
        var (unpublished, late, silence, days) = (0, 0L, 0L, 0L);
        var channel = new List<int>(windows.Length);
        foreach (var series in question.Series)
        {
            var own = new List<int>(series.Episodes.Count);
            foreach (var index in series.Episodes)
            {
                var episode = question.Episodes[index];
                if (windows[index] < 0)
                {
                    unpublished++;
                    late += episode.LateAt(question.Never);
                    continue;
                }

                var window = question.Windows[windows[index]];
                late += episode.LateAt(episode.MinuteIn(window));
                own.Add(episode.DayIn(window));
            }

            days += own.Sum(day => (long)day - question.Channel.SilentFrom);
            silence += Weight(series.Promise, own, question.Through);
            channel.AddRange(own);
        }

        channel.Sort();
        return new SlotWeights(unpublished, late, silence + Weight(question.Channel, channel, question.Through), days);
    }

    /// <summary>The weight of one series' own silences in a choice.</summary>
    /// <param name="question">The question.</param>
    /// <param name="series">The series, by position.</param>
    /// <param name="windows">By episode: its window, by index; −1 for none.</param>
    public static long SilenceOf(SlotQuestion question, int series, ReadOnlySpan<int> windows)
    {
        var own = new List<int>();
        foreach (var index in question.Series[series].Episodes)
        {
            if (windows[index] >= 0)
            {
                own.Add(question.Episodes[index].DayIn(question.Windows[windows[index]]));
            }
        }

        return Weight(question.Series[series].Promise, own, question.Through);
    }

    private static long Weight(SlotPromise promise, List<int> planned, int through)
    {
        if (promise.Months is not { } months)
        {
            var last = planned.Count > 0 ? planned[^1] : promise.SilentFrom;
            return SilencePenalty.OfDays(promise.SilentFrom, [.. planned], promise.Longest, last)
                + SilencePenalty.OpenWeight(through - promise.OpenFrom - promise.Longest);
        }

        int[] uploads = [.. months.Made, .. planned];
        return SilencePenalty.OfMonths(uploads, months.Each, [.. months.Starts], through);
    }
}
