using EpisodePlanner.Planning;
using NodaTime;

namespace EpisodePlanner.Writing;

/// <summary>When something is planned for. A planned date is never said as if it were certain.</summary>
internal static class DateWording
{
    /// <summary>
    /// The public moment of an episode and its early view: "planned for Friday 4 December 2026 at 17:00, early view from
    /// Thursday 3 December 2026 at 17:00"; that it has no date where it has none.
    /// </summary>
    public static Markdown WithEarlyView(PlannedEpisode episode, Ledger ledger)
    {
        if (episode.Publish is not { } moment)
        {
            return Markdown.Of($"without a date in this plan");
        }

        var day = Markdown.Of($"planned for {InWords.Moment(ledger.At(moment))}");
        var early = EarlyView(episode, ledger.Workshop);
        return early == Duration.Zero
            ? day
            : Markdown.Of($"{day}, early view from {InWords.Moment(ledger.At(moment - early))}");
    }

    /// <summary>When a stage is done: its span, or that it has none.</summary>
    public static Markdown Span(PlannedStage stage, Ledger ledger) => (stage.Begun, stage.Start, stage.Finish) switch
    {
        (true, _, { } finish) => Markdown.Of($"going on, planned to end on {InWords.Moment(ledger.At(finish))}"),
        (_, { } start, { } finish) =>
            Markdown.Of($"planned {InWords.Span(ledger.At(start), ledger.At(finish))}"),
        _ => Markdown.Of($"without a date in this plan"),
    };

    private static Duration EarlyView(PlannedEpisode episode, Workshop workshop)
    {
        var hours = workshop.Episodes.Find(episode.Id)?.EarlyViewHours ?? workshop.Settings.EarlyViewHours ?? 0;
        return Duration.FromMinutes((long)decimal.Ceiling(hours * 60));
    }
}
