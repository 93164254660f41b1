using EpisodePlanner.Planning;

namespace EpisodePlanner.Writing;

/// <summary>Shots in sentences. A picture is only claimed where it was taken.</summary>
internal static class ShotWording
{
    /// <summary>A shot that is there.</summary>
    public static Block Got(ShotFact shot) => Say.Item(Say.From(
        $"{Name(shot)}, {Moment(shot)} {InWords.Quoted(shot.Task.Name)}.", shot.Fact));

    /// <summary>A shot still to be taken: how long it takes, from when, and by when at the latest.</summary>
    public static Block ToFilm(ShotFact shot, Ledger ledger)
    {
        var when = shot.Shot.Moment switch
        {
            ShotMoment.Before => Before(shot, ledger),
            ShotMoment.During => During(shot, ledger),
            _ => After(shot, ledger),
        };
        return Say.Item([when, .. Kept(shot, ledger), .. Latest(shot, ledger), .. Needed(shot)]);
    }

    /// <summary>A shot whose moment passed and that can be staged once more.</summary>
    public static Block Again(ShotFact shot, Ledger ledger) =>
        Say.Item([Passed(shot, ledger, "It can be taken again."), .. Needed(shot)]);

    /// <summary>A shot that is lost.</summary>
    public static Block Lost(ShotFact shot, Ledger ledger)
    {
        var lost = shot.Shot.State == ShotState.Lost
            ? Say.From($"{Name(shot)}: it can't be taken any more. Claim no such picture.", shot.Fact)
            : Passed(shot, ledger, "It can't be taken any more. Claim no such picture.");
        return Say.Item([lost, .. Flag(shot)]);
    }

    /// <summary>The name of a lost shot, and since when at the latest where the log says it.</summary>
    public static Markdown LostName(ShotFact shot, Ledger ledger) =>
        shot is { Shot.State: not ShotState.Lost, End.Happened: { } entry }
            ? Markdown.Of($"{Name(shot)} (gone by {InWords.Day(ledger.At(entry.At).Date)})")
            : Name(shot);

    private static Sentence Before(ShotFact shot, Ledger ledger) => Say.From(
        $"{Name(shot)}{Minutes(shot)}: before {InWords.Quoted(shot.Task.Name)} starts{On(shot.End?.Planned, false, ledger)}.",
        Facts(shot, shot.End?.Planned));

    private static Sentence During(ShotFact shot, Ledger ledger) => Say.From(
        $"{Name(shot)}{Minutes(shot)}: during {InWords.Quoted(shot.Task.Name)}{On(shot.From, false, ledger)}.",
        Facts(shot, shot.From));

    private static Sentence After(ShotFact shot, Ledger ledger) => Say.From(
        $"{Name(shot)}{Minutes(shot)}: after {InWords.Quoted(shot.Task.Name)} is done{On(shot.From, true, ledger)}.",
        Facts(shot, shot.From));

    private static IEnumerable<Sentence> Kept(ShotFact shot, Ledger ledger) =>
        ledger.Film(shot.Task, shot.Shot) is { Start: { } start } film
            ? [Say.From($"The plan keeps time for it on {InWords.Moment(ledger.At(start))}.", shot.Fact, Fact.Of(film))]
            : [];

    private static IEnumerable<Sentence> Latest(ShotFact shot, Ledger ledger)
    {
        if (shot is not { Shot.Moment: not ShotMoment.Before, End: { At: { } at, Planned: { } stage } end })
        {
            return [];
        }

        var moment = InWords.Moment(ledger.At(at));
        var doing = end.Name == TailWords.Whole ? Markdown.Of($"{end.Name}") : InWords.Quoted(end.Name);
        return end.Finish
            ? [Say.From($"At the latest by {moment}, when {doing} is planned to end.", Facts(shot, stage))]
            : [Say.From($"At the latest by {moment}, when {doing} is planned to start.", Facts(shot, stage))];
    }

    private static Sentence Passed(ShotFact shot, Ledger ledger, string so)
    {
        var entry = shot.End!.Happened!;
        var day = InWords.Day(ledger.At(entry.At).Date);
        var doing = InWords.Quoted(shot.End.Name);
        var ours = shot.End.Finish ? Markdown.Of($"{doing} was done on {day}") : Markdown.Of($"{doing} had begun by {day},");
        return Say.From($"{Name(shot)}: {ours} before the picture was taken. {so}", shot.Fact, Fact.Of(entry));
    }

    private static IEnumerable<Sentence> Needed(ShotFact shot) =>
        shot.Shot.Required ? [Say.From($"The cut needs it.", shot.Fact)] : [];

    private static IEnumerable<Sentence> Flag(ShotFact shot) =>
        shot.Shot.Required ? [Say.From($"The cut needed it: tell that part another way.", shot.Fact)] : [];

    private static string Moment(ShotFact shot) => shot.Shot.Moment switch
    {
        ShotMoment.Before => "before",
        ShotMoment.During => "during",
        _ => "after",
    };

    private static Markdown Name(ShotFact shot) => InWords.Quoted(shot.Shot.Name);

    private static Markdown Minutes(ShotFact shot) =>
        shot.Shot.Minutes > 0 ? Markdown.Of($" ({InWords.Work(shot.Shot.Minutes)})") : default;

    private static Markdown On(PlannedStage? stage, bool finish, Ledger ledger) => stage switch
    {
        { Begun: true } when !finish => Markdown.Of($", which is going on"),
        { Start: { } start } when !finish => Markdown.Of($", planned for {InWords.Moment(ledger.At(start))}"),
        { Finish: { } end } => Markdown.Of($", planned for {InWords.Moment(ledger.At(end))}"),
        _ => default,
    };

    private static IEnumerable<Fact> Facts(ShotFact shot, PlannedStage? stage) =>
        stage is null ? [shot.Fact] : [shot.Fact, Fact.Of(stage)];
}
