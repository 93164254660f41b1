using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Proving.Bench;

/// <summary>One step of a function of minutes: from a first to a last minute it is level, or rises minute by minute.</summary>
/// <param name="From">The first minute.</param>
/// <param name="To">The last minute.</param>
/// <param name="Value">The value at the first minute.</param>
/// <param name="Rises">Whether each minute adds one.</param>
internal readonly record struct LadderStep(int From, int To, int Value, bool Rises);

/// <summary>When an amount of time in some hours is over, as a function of when it begins.</summary>
internal static class Ladder
{
    /// <summary>The steps between two minutes, both included; they end before the minute from which it is never over.</summary>
    public static IEnumerable<LadderStep> Of(IntervalCalendar hours, int minutes, int from, int to)
    {
        for (var at = from; at <= to && hours.Finish(at, minutes) is { } value;)
        {
            var step = StepAt(hours, minutes, at, to, value);
            yield return step;
            at = step.To + 1;
        }
    }

    private static LadderStep StepAt(IntervalCalendar hours, int minutes, int at, int to, int value)
    {
        if (minutes == 0)
        {
            return new LadderStep(at, to, value, Rises: true);
        }

        var span = hours[hours.FirstEndingAfter(at)];
        if (at < span.Start)
        {
            return new LadderStep(at, Math.Min(to, span.Start - 1), value, Rises: false);
        }

        // The end of the opening in which the time is over; from there the next minute lies in a later opening.
        var room = hours[hours.FirstEndingAfter(value - 1)].End - value;
        return new LadderStep(at, Math.Min(to, Math.Min(span.End - 1, at + room)), value, Rises: true);
    }
}
