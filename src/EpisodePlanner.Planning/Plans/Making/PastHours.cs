using EpisodePlanner.Scheduling;
using NodaTime;

namespace EpisodePlanner.Planning;

/// <summary>How long stations were open before the moment of planning; looked up only where a lag asks.</summary>
internal sealed class PastHours(Workshop workshop, TimeAxis axis)
{
    private readonly Lazy<Span> span = new(() => Span.Of(workshop, axis));

    /// <summary>Open minutes of a station, or of presence where none is named, from a logged moment until planning.</summary>
    public int OpenSince(Instant moment, Id? station)
    {
        var (before, table) = (span.Value.Axis, span.Value.Table);
        var hours = station is { } id ? table.Stations[table.IndexOf(id)].Hours : table.Presence;
        return hours.WorkBetween(Math.Clamp(before.MinuteOf(moment), 0, before.Horizon), before.Horizon);
    }

    /// <summary>The time from the first log entry to the moment of planning.</summary>
    private sealed record Span(TimeAxis Axis, StationTable Table)
    {
        public static Span Of(Workshop workshop, TimeAxis axis)
        {
            var first = workshop.Log.Min(entry => axis.MinuteOf(entry.At));
            var minutes = Math.Clamp(-first, 0, IntervalCalendar.MaximumMinute);
            var before = new TimeAxis(axis.MomentOf(-minutes), axis.Zone, minutes);
            return new Span(before, new StationTable(workshop, before));
        }
    }
}
