namespace EpisodePlanner.Writing;

/// <summary>What belongs to no single series: work on the workshop itself, and the silence of the whole channel.</summary>
internal static class LetterWorkshop
{
    public static Section Section(Ledger ledger)
    {
        var news = SeriesNews.Of(null, ledger);
        return Say.Section(2, $"The workshop itself", news.Tasks.Count == 0
            ? []
            : [Say.Paragraph(NewsWording.Since(news)), .. Tasks(ledger, news), .. LetterSeries.WentWrong(ledger, news)]);
    }

    public static Section Channel(Ledger ledger) => Say.Section(2, $"The whole channel", ledger.Plan.Channel.PromiseAssumed
        ? []
        : LetterSeries.Silences(ledger, ledger.Plan.Channel));

    private static IEnumerable<Block> Tasks(Ledger ledger, SeriesNews news) =>
        news.Tasks.Select(task => NewsWording.Task(task, ledger));
}
