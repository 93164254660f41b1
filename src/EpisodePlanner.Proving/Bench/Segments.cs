using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Proving.Bench;

/// <summary>
/// The open time of all work that may pause, cut wherever any of its hours begins or ends, so that each piece is wholly
/// open or wholly closed for each way of working; and cut finer while there are few pieces.
/// </summary>
internal sealed class Segments
{
    private readonly MinuteSpan[] all;

    /// <summary>Cuts the time until a limit.</summary>
    /// <param name="open">The hours of each way of working that counts, the same hours as often as they are used.</param>
    /// <param name="cuts">More minutes at which to cut.</param>
    /// <param name="until">What lies after this is left out.</param>
    /// <param name="budget">About so many pieces over all ways of working, where hours leave the choice.</param>
    public Segments(IReadOnlyList<IntervalCalendar> open, IEnumerable<int> cuts, int until, int budget)
    {
        var clipped = open.Distinct().Select(hours => hours.Clip(0, until)).ToList();
        var points = clipped.SelectMany(hours => hours.Spans()).SelectMany(span => (int[])[span.Start, span.End])
            .Concat(cuts).Distinct().Order().ToList();
        var joined = clipped.Aggregate(IntervalCalendar.Never, (one, two) => one.Union(two));
        var minutes = open.Sum(hours => (long)hours.Clip(0, until).TotalWork);
        var longest = (int)Math.Max(1, (minutes + budget - 1) / budget);
        all = [.. points.Zip(points.Skip(1), (from, to) => new MinuteSpan(from, to))
            .Where(span => joined.IsOpen(span.Start))
            .SelectMany(span => Split(span, longest))];
    }

    /// <summary>The pieces, ascending.</summary>
    public IReadOnlyList<MinuteSpan> All => all;

    /// <summary>The positions of the pieces inside a stretch of time.</summary>
    public IEnumerable<int> Within(MinuteSpan span)
    {
        var first = Array.FindIndex(all, piece => piece.Start >= span.Start);
        for (var i = first; i >= 0 && i < all.Length && all[i].End <= span.End; i++)
        {
            yield return i;
        }
    }

    private static IEnumerable<MinuteSpan> Split(MinuteSpan span, int longest)
    {
        var pieces = (span.Length + longest - 1) / longest;
        for (var i = 0; i < pieces; i++)
        {
            yield return new MinuteSpan(span.Start + (int)((long)span.Length * i / pieces), span.Start + (int)((long)span.Length * (i + 1) / pieces));
        }
    }
}
