using EpisodePlanner.Planning;

namespace EpisodePlanner.Writing;

/// <summary>One series in the letter.</summary>
internal static class LetterSeries
{
    private const int SilencesTold = 2;

    public static IEnumerable<Section> Sections(Ledger ledger, Outlook outlook)
    {
        var news = SeriesNews.Of(outlook.Series, ledger);
        yield return Say.Section(2, $"{outlook.Name}", Happened(ledger, outlook, news));
        yield return Say.Section(3, $"What went wrong", WentWrong(ledger, news));
        yield return Say.Section(3, $"What comes next", [.. LetterNext.Blocks(ledger, outlook), .. Silences(ledger, outlook)]);
        yield return Say.Section(3, $"What was said before", LetterTold.Blocks(ledger, outlook));
    }

    /// <summary>What failed since, and what was done about it.</summary>
    public static IEnumerable<Block> WentWrong(Ledger ledger, SeriesNews news) => news.Tasks.SelectMany(task => task.Done
        .Where(work => work.Entry.Outcome == LogOutcome.Failed)
        .Select(work => FailureWording.Failure(work, task, ledger)));

    /// <summary>The silences of an outlook that are too long, the next few of them.</summary>
    public static IEnumerable<Block> Silences(Ledger ledger, Outlook outlook) => outlook.Alarms
        .Take(SilencesTold)
        .Select(silence => SilenceWording.Of(outlook, silence, ledger.Today));

    private static IEnumerable<Block> Happened(Ledger ledger, Outlook outlook, SeriesNews news)
    {
        yield return Say.Paragraph([.. Resting(ledger, outlook), NewsWording.Since(news)]);
        foreach (var task in news.Tasks)
        {
            yield return NewsWording.Task(task, ledger);
        }
    }

    private static IEnumerable<Sentence> Resting(Ledger ledger, Outlook outlook)
    {
        if (outlook.State != SeriesState.Resting)
        {
            return [];
        }

        return ledger.Workshop.Series.Find(outlook.Series)?.RestingUntil is { } day
            ? [Say.From($"This series rests until {InWords.Day(day)}.", Fact.Of(outlook))]
            : [Say.From($"This series rests; no day is set for its return.", Fact.Of(outlook))];
    }
}
