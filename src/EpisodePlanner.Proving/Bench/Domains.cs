using EpisodePlanner.Scheduling;
using Google.OrTools.Util;

namespace EpisodePlanner.Proving.Bench;

/// <summary>Sets of minutes as the solver wants them.</summary>
internal static class Domains
{
    /// <summary>All minutes of some spans, their ends excluded.</summary>
    public static Domain Of(IEnumerable<MinuteSpan> spans) => Domain.FromFlatIntervals(
        [.. IntervalCalendar.FromSpans(spans.Where(span => span.Length > 0)).Spans().SelectMany(span => (long[])[span.Start, span.End - 1])]);

    /// <summary>All open minutes between two minutes, both included.</summary>
    public static Domain Of(IntervalCalendar open, int from, int to) => Of(open.Clip(from, to + 1).Spans());
}
