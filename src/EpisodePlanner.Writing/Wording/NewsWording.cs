using EpisodePlanner.Planning;

namespace EpisodePlanner.Writing;

/// <summary>What was done since the last upload, in sentences.</summary>
internal static class NewsWording
{
    /// <summary>The upload since which, and the hours since.</summary>
    public static Sentence Since(SeriesNews news)
    {
        var done = news.Done.Where(work => LogWording.Counts(work.Entry)).ToList();
        var facts = done.Select(work => Fact.Of(work.Entry)).Concat(news.Last is { } last ? [Fact.Of(last)] : []);
        return (done.Count, news.Last) switch
        {
            (0, null) => Say.From($"Nothing is out yet, and the log holds no hours.", facts),
            (0, _) => Say.From($"{Start(news.Last)}: no hours in the log.", facts),
            _ => Say.From($"{Start(news.Last)}: {LogWording.Hours(done)}.", facts),
        };
    }

    /// <summary>One task or the footage of an episode: its hours, and whether it is finished.</summary>
    public static Block Task(TaskNews news, Ledger ledger)
    {
        var counted = news.Done.Where(work => LogWording.Counts(work.Entry)).ToList();
        var (state, reasons) = State(news, ledger);
        var facts = counted.Select(work => Fact.Of(work.Entry)).Concat(reasons).Distinct();
        return Say.Item(Say.From($"{Subject(news)}: {Hours(counted)}{state}.", facts));
    }

    private static Markdown Subject(TaskNews news) => news.Task is null
        ? Markdown.Of($"Work on the footage of {InWords.Quoted(news.Name)}")
        : InWords.Quoted(news.Name);

    private static Markdown Start(Upload? last) => last switch
    {
        null => Markdown.Of($"Nothing is out yet. So far"),
        { Title: { } title } =>
            Markdown.Of($"Since the last upload, {InWords.Quoted(title)} on {InWords.Day(last.Date)}"),
        _ => Markdown.Of($"Since the last upload on {InWords.Day(last.Date)}"),
    };

    private static Markdown Hours(List<WorkDone> counted) =>
        counted.Count == 0 ? default : Markdown.Of($"{LogWording.Hours(counted)}, ");

    private static (Markdown State, IEnumerable<Fact> From) State(TaskNews news, Ledger ledger)
    {
        if (news.Task is { } task && ledger.FinishedBy(task) is { } entry)
        {
            return (Markdown.Of($"finished"), [Fact.Of(entry)]);
        }

        var left = news.Task is { } open ? ledger.Left(open).ToList() : [];
        var minutes = left.Sum(stage => stage.Minutes);
        return (left.Count, minutes) switch
        {
            (0, _) => (Markdown.Of($"not finished"), [Fact.Of(news.Done[^1].Entry)]),
            (_, 0) => (Markdown.Of($"not finished"), left.Select(Fact.Of)),
            _ => (Markdown.Of($"not finished, {InWords.Work(minutes)} still planned"), left.Select(Fact.Of)),
        };
    }
}
