using EpisodePlanner.Planning;

namespace EpisodePlanner.Writing;

/// <summary>What went wrong and what was done about it, told plainly.</summary>
internal static class FailureWording
{
    public static Block Failure(WorkDone failed, TaskNews news, Ledger ledger)
    {
        var entry = failed.Entry;
        var day = InWords.Day(ledger.At(entry.At).Date);
        var said = Say.From($"{InWords.Quoted(failed.Name)} failed on {day}{After(failed)}.", Fact.Of(entry));
        return Say.Item([said, .. Then(failed, news, ledger)]) with { Quote = Say.Quote(entry.Note, Fact.Of(entry)) };
    }

    private static Markdown After(WorkDone failed) => failed.Entry.Minutes == 0
        ? default
        : Markdown.Of($" after {LogWording.Minutes(failed.Entry.Minutes, failed.Effort)}");

    private static IEnumerable<Sentence> Then(WorkDone failed, TaskNews news, Ledger ledger)
    {
        var again = news.Done.Where(work => work.Failures.Contains(failed.Entry)).ToList();
        var counted = again.Where(work => LogWording.Counts(work.Entry)).ToList();
        if (again.FirstOrDefault(work => work.Entry.Outcome == LogOutcome.Done) is { } done)
        {
            return [DoneAgain(failed, done, counted, ledger)];
        }

        return counted.Count > 0
            ? [Say.From($"So far {LogWording.Hours(counted)} went into doing it again.", Facts([failed, .. counted]))]
            : NextTry(failed, news, ledger);
    }

    private static Sentence DoneAgain(WorkDone failed, WorkDone done, List<WorkDone> again, Ledger ledger)
    {
        var upTo = again.TakeWhile(work => work.Entry.At <= done.Entry.At).ToList();
        var day = InWords.Day(ledger.At(done.Entry.At).Date);
        var hours = upTo.Count == 0 ? default : Markdown.Of($", with {LogWording.Hours(upTo)}");
        return Say.From($"It was done again by {day}{hours}.", Facts([failed, .. upTo, done]));
    }

    private static IEnumerable<Sentence> NextTry(WorkDone failed, TaskNews news, Ledger ledger)
    {
        var next = news.Task is { } task
            ? ledger.Left(task).FirstOrDefault(stage => failed.Entry.Stage is null || stage.Key.Stage == failed.Entry.Stage)
            : null;
        return next is null
            ? []
            : [Say.From($"The next try is {DateWording.Span(next, ledger)}.", Fact.Of(failed.Entry), Fact.Of(next))];
    }

    private static IEnumerable<Fact> Facts(IEnumerable<WorkDone> works) =>
        works.Select(work => Fact.Of(work.Entry)).Distinct();
}
