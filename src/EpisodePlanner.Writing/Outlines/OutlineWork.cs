using EpisodePlanner.Planning;

namespace EpisodePlanner.Writing;

/// <summary>What is left before the episode is ready: the build, then the footage.</summary>
internal static class OutlineWork
{
    public static IEnumerable<Section> Sections(Ledger ledger, PlannedEpisode episode)
    {
        var tasks = ledger.Story.WithWhatTheyWaitFor(ledger.Story.TasksOf(episode));
        var left = tasks.SelectMany(ledger.Left).OrderBy(stage => stage.Start is null).ThenBy(stage => stage.Start);
        yield return Say.Section(2, $"Still to do on the build", left.Select(stage => StageWording.Line(stage, ledger)));
        yield return Say.Section(2, $"Still to do on the footage", Footage(ledger, episode));
    }

    private static IEnumerable<Block> Footage(Ledger ledger, PlannedEpisode episode)
    {
        var done = WorkDone.Of(episode, ledger).Select(work => LogWording.Line(work, ledger));
        var left = ledger.Tail(episode).Select(stage => StageWording.Line(stage, ledger));
        return done.Concat(left).Append(Ready(ledger, episode));
    }

    private static Block Ready(Ledger ledger, PlannedEpisode episode) => episode.Ready is { } ready
        ? Say.Paragraph(Say.From($"Ready: planned for {InWords.Moment(ledger.At(ready))}.", Fact.Of(episode)))
        : Say.Paragraph();
}
