using EpisodePlanner.Planning;

namespace EpisodePlanner.Web.Telling;

/// <summary>What was tried for an episode, in words that a line and a table share.</summary>
internal sealed class WhyWords(EpisodeWhy why)
{
    private const int MostMoves = 3;

    /// <summary>How things of the plan are called.</summary>
    public PlanNames Names { get; } = new(why.Plan);

    /// <summary>"Out on Tuesday 16 February, 18:30", or why not.</summary>
    public string Date => why.Episode switch
    {
        { Date: { } day, Publish: { } moment } => $"Out on {Names.Day(day)}, {Words.Time(moment.InZone(why.Plan.Zone).TimeOfDay)}",
        { Ready: { } ready } => $"Ready {Names.Moment(ready)}, but no slot takes it.",
        _ => "It has no date: some of its work can't be done as things stand.",
    };

    /// <summary>What was tried and wins a day, or at least time.</summary>
    public IEnumerable<WhatIf> Winning => why.WhatIfs.Where(tried => tried.Helps || tried.MinutesWon > 0);

    /// <summary>What was tried and wins nothing.</summary>
    public IEnumerable<string> InVain => why.WhatIfs.Except(Winning).Select(tried => tried.Idea.Says);

    /// <summary>"4 days earlier, Fri 12 Feb".</summary>
    public string Won(WhatIf tried) => tried switch
    {
        { Helps: true, DaysWon: { } days } => $"{Words.Days(days)} earlier, {Names.ShortDay(tried.Date!.Value)}",
        { Helps: true } => $"out on {Names.ShortDay(tried.Date!.Value)}",
        _ when tried.Date == why.Episode.Date => $"ready {Words.Minutes(tried.MinutesWon!.Value)} earlier, out on the same day",
        { Date: { } date } => $"ready {Words.Minutes(tried.MinutesWon!.Value)} earlier, but out on {Names.ShortDay(date)}",
        _ => $"ready {Words.Minutes(tried.MinutesWon!.Value)} earlier, but in no slot",
    };

    /// <summary>The other uploads that are later then; empty for none.</summary>
    public static string Later(WhatIf tried) => Moves([.. tried.Others.Where(move => move.IsLater)]);

    /// <summary>Work that can wait a day.</summary>
    public IEnumerable<string> CanWait => why.DayLater.Where(task => task.CanWait).Select(task => PlanNames.Quote(task.Name));

    /// <summary>Uploads that are later, the first few of many.</summary>
    public static string Moves(IReadOnlyList<UploadMove> moves)
    {
        var more = moves.Count - MostMoves;
        var told = string.Join(", ", moves.Take(MostMoves).Select(Say));
        return more > 0 ? $"{told} and {more} more" : told;
    }

    /// <summary>How long work waits for a station.</summary>
    public static string Waited(Contest contest) =>
        $"{Words.Minutes((int)Math.Min(int.MaxValue, contest.Minutes))} of waiting, all work together";

    /// <summary>Whose work goes before whose.</summary>
    public string Say(Rivalry rivalry)
    {
        var times = rivalry.Times == 1 ? "once" : $"{rivalry.Times} times";
        var first = $"{PlanNames.Quote(rivalry.Before.Name)} before {PlanNames.Quote(rivalry.First.Name)}";
        return rivalry.Winner == rivalry.Loser
            ? $"work of {Series(rivalry.Winner)} among itself, {times}: first {first}"
            : $"{Series(rivalry.Winner)} goes before {Series(rivalry.Loser)}, {times}: first {first}";
    }

    private static string Say(UploadMove move) => move.Days is { } days
        ? $"{PlanNames.Quote(move.Title)} {Words.Days(days)} later"
        : $"{PlanNames.Quote(move.Title)} without a date";

    private string Series(Id id) => id.IsEmpty ? "the workshop" : Names.Series(id);
}
