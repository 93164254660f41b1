using EpisodePlanner.Planning;

namespace EpisodePlanner.Writing;

/// <summary>What was done, in sentences, from the log alone.</summary>
internal static class LogWording
{
    /// <summary>One log entry as a line of a diary, the maker's note quoted below it.</summary>
    public static Block Line(WorkDone work, Ledger ledger)
    {
        var day = InWords.Day(ledger.At(work.Entry.At).Date);
        var facts = work.Failures.Prepend(work.Entry).Select(Fact.Of);
        var line = Say.From($"{day}: {Attempt(work)}{AndMinutes(work)}, {Outcome(work)}.", facts);
        return Say.Item([line, .. Remaining(work)]) with { Quote = Say.Quote(work.Entry.Note, Fact.Of(work.Entry)) };
    }

    /// <summary>The hours of several entries together; nothing where none were logged.</summary>
    public static IEnumerable<Sentence> Total(IReadOnlyCollection<WorkDone> works)
    {
        var counted = works.Where(work => Counts(work.Entry)).ToList();
        return counted.Count == 0
            ? []
            : [Say.From($"In all {Hours(counted)}.", counted.Select(work => Fact.Of(work.Entry)))];
    }

    /// <summary>"14 h of work by hand and 22 h on machines"; empty where no minutes were logged.</summary>
    public static Markdown Hours(IReadOnlyCollection<WorkDone> works)
    {
        var sums = works.Where(work => Counts(work.Entry))
            .GroupBy(work => work.Effort, work => work.Entry.Minutes)
            .OrderBy(group => group.Key)
            .Select(group => Minutes(group.Sum(), group.Key));
        return InWords.List([.. sums]);
    }

    /// <summary>Whether the minutes of an entry are work that is over.</summary>
    public static bool Counts(LogEntry entry) => entry is { Minutes: > 0, Outcome: not LogOutcome.Begun };

    /// <summary>"6 h by hand".</summary>
    public static Markdown Minutes(int minutes, Effort effort) => effort switch
    {
        Effort.Hands => Markdown.Of($"{InWords.Work(minutes)} by hand"),
        Effort.Machine => Markdown.Of($"{InWords.Work(minutes)} on machines"),
        Effort.Waiting => Markdown.Of($"{InWords.Passing(minutes)} of waiting"),
        _ => Markdown.Of($"{InWords.Work(minutes)} by hand and machine together"),
    };

    private static Markdown Attempt(WorkDone work) => work.Failures.Count switch
    {
        0 => InWords.Quoted(work.Name),
        1 => Markdown.Of($"second try at {InWords.Quoted(work.Name)}"),
        2 => Markdown.Of($"third try at {InWords.Quoted(work.Name)}"),
        var failures => Markdown.Of($"try {failures + 1} at {InWords.Quoted(work.Name)}"),
    };

    private static Markdown AndMinutes(WorkDone work) => (work.Entry.Minutes, work.Machine) switch
    {
        (0, _) => default,
        (var minutes, { } machine) when work.Effort == Effort.Machine =>
            Markdown.Of($", {InWords.Work(minutes)} on {InWords.Quoted(machine)}"),
        var (minutes, _) => Markdown.Of($", {Minutes(minutes, work.Effort)}"),
    };

    private static string Outcome(WorkDone work) => work.Entry.Outcome switch
    {
        LogOutcome.Done => "done",
        LogOutcome.Failed => "failed",
        LogOutcome.Begun => "begun",
        _ => "not finished that day",
    };

    private static IEnumerable<Sentence> Remaining(WorkDone work) => work.Entry switch
    {
        { Outcome: LogOutcome.Done or LogOutcome.Begun } => [],
        { RemainingMinutes: { } left } =>
            [Say.From($"Left to do after it: {InWords.Work(left)}.", Fact.Of(work.Entry))],
        { Outcome: LogOutcome.Failed } when work.Last =>
            [Say.From($"{InWords.Quoted(work.Name)} has to be done again.", Fact.Of(work.Entry))],
        _ => [],
    };
}
