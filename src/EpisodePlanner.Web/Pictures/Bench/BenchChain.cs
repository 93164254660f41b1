using EpisodePlanner.Planning;
using NodaTime;

namespace EpisodePlanner.Web.Pictures;

/// <summary>A stretch of the chain of the next upload in one row of the bench.</summary>
/// <param name="Row">The row.</param>
/// <param name="From">Its begin, minutes after the row's noon.</param>
/// <param name="To">Its end.</param>
/// <param name="Reason">What the chain waits for from here on; null where it goes on from the row above.</param>
public sealed record ChainStretch(int Row, int From, int To, string? Reason);

/// <summary>Lays the chain of an episode along the rows, like a line of writing that goes on in the next row.</summary>
public static class BenchChain
{
    private const int Day = 1440;

    /// <summary>The stretches from the first step to the public moment, as far as the view shows them.</summary>
    public static ValueList<ChainStretch> Of(Plan plan, PlannedEpisode? episode, BenchView view)
    {
        if (episode is not { Publish: { } publish } || episode.Chain.Count == 0)
        {
            return [];
        }

        var steps = ChainSteps.Of(episode.Chain, int.MaxValue).Select(step => step.Link).Reverse().ToList();
        var bounds = steps.Select((step, i) => (step.Start, End: i + 1 < steps.Count ? steps[i + 1].Start : publish, step));
        return bounds.SelectMany(step => Split(plan, view, step.Start, step.End, step.step.Cause.Says)).ToValueList();
    }

    private static IEnumerable<ChainStretch> Split(Plan plan, BenchView view, Instant start, Instant end, string reason)
    {
        var from = Minutes(plan, view, start);
        var to = Minutes(plan, view, end);
        var first = (int)Math.Floor((double)from / Day);
        for (var row = Math.Max(0, first); row < view.Days && row * Day < to; row++)
        {
            yield return new ChainStretch(
                row, Math.Max(0, from - (row * Day)), Math.Min(Day, to - (row * Day)), row == first ? reason : null);
        }
    }

    private static int Minutes(Plan plan, BenchView view, Instant moment) =>
        BenchRows.MinutesAfterNoon(moment.InZone(plan.Zone).LocalDateTime, view.FirstDay);
}
