using EpisodePlanner.Planning;

namespace EpisodePlanner.Writing;

/// <summary>The update to supporters: what happened, what went wrong, what comes next, what was said before.</summary>
public static class Letter
{
    /// <summary>The letter as of the plan's moment.</summary>
    public static Written Write(Plan plan)
    {
        var ledger = new Ledger(plan);
        var page = new Page(
            Markdown.Of($"News from {ledger.Workshop.Name}"),
            plan.Series.SelectMany(outlook => LetterSeries.Sections(ledger, outlook))
                .Prepend(Opening(ledger))
                .Append(LetterWorkshop.Section(ledger))
                .Append(LetterWorkshop.Channel(ledger))
                .ToValueList());
        return new Written(page, MarkdownPage.Write(page));
    }

    private static Section Opening(Ledger ledger) => Say.Section(2, $"", Say.Paragraph([
        Say.From($"This is how things stood on {InWords.Moment(ledger.Plan.Now)}, by the log and the plan."),
        Say.From($"Dates to come are planned, not promised."),
        .. NoSeries(ledger),
    ]));

    private static IEnumerable<Sentence> NoSeries(Ledger ledger) => ledger.Plan.Series.Count == 0
        ? [Say.From($"No series is being told, and nothing is planned.")]
        : [];
}
