using EpisodePlanner.Planning;

namespace EpisodePlanner.Web.Telling;

/// <summary>Why an episode goes out when it does, what would bring it forward, what can wait, and what is contested.</summary>
internal sealed class WhyText(ISheet page, EpisodeWhy why)
{
    private const int MostSteps = 12;
    private const int MostOthers = 3;
    private const int MostContests = 5;

    private readonly PlanNames names = new(why.Plan);

    public void Write()
    {
        WriteDate();
        WriteWhatIfs();
        WriteDayLater();
        WriteContests();
    }

    private void WriteDate()
    {
        page.Heading(names.Full(why.Episode));
        page.Paragraph(why.Episode is { Date: { } day, Publish: { } moment }
            ? $"Out on {names.Day(day)}, {Words.Time(moment.InZone(why.Plan.Zone).TimeOfDay)}"
            : why.Episode.Ready is { } ready ? $"Ready {names.Moment(ready)}, but no slot takes it." : "It has no date: some of its work can't be done as things stand.");
        new ChainText(page, why.Plan).Write(why.Episode, MostSteps);
    }

    private void WriteWhatIfs()
    {
        page.Heading("What would bring it forward");
        foreach (var tried in why.WhatIfs.Where(tried => tried.Helps))
        {
            page.Item($"{Won(tried)}: {tried.Idea.Says}.");
            WriteBelow(tried);
        }

        foreach (var tried in why.WhatIfs.Where(tried => !tried.Helps && tried.MinutesWon > 0))
        {
            page.Item($"Ready {Words.Minutes(tried.MinutesWon!.Value)} earlier, but out on {Day(tried)}: {tried.Idea.Says}.");
            WriteBelow(tried);
        }

        var rest = why.WhatIfs.Where(tried => !tried.Helps && tried.MinutesWon is not > 0).Select(tried => tried.Idea.Says).ToList();
        if (rest.Count > 0)
        {
            page.Paragraph($"Tried without winning anything: {string.Join("; ", rest)}.");
        }
        else if (why.WhatIfs.Count == 0)
        {
            page.Paragraph("Nothing that this planner knows to try.");
        }
    }

    private string Day(WhatIf tried) => tried.Date == why.Episode.Date
        ? "the same day"
        : tried.Date is { } date ? names.ShortDay(date) : "no day";

    private string Won(WhatIf tried) => tried.DaysWon is { } days
        ? $"{Words.Days(days)} earlier, {names.ShortDay(tried.Date!.Value)}"
        : $"Out on {names.ShortDay(tried.Date!.Value)}";

    private void WriteBelow(WhatIf tried)
    {
        var later = tried.Others.Where(move => move.IsLater).ToList();
        if (later.Count > 0)
        {
            page.Below($"later then: {Moves(later)}");
        }

        foreach (var caution in tried.Idea.Cautions)
        {
            page.Below(CautionWords.Of(caution));
        }
    }

    private void WriteDayLater()
    {
        page.Heading("What can wait a day");
        if (why.DayLater.Count == 0)
        {
            page.Paragraph("No work is planned to begin in the next two weeks.");
            return;
        }

        var free = why.DayLater.Where(task => task.CanWait).Select(task => PlanNames.Quote(task.Name)).ToList();
        if (free.Count > 0)
        {
            page.Paragraph($"These can begin a day later without moving any upload, each by itself: {string.Join(", ", free)}.");
        }

        foreach (var task in why.DayLater.Where(task => !task.CanWait))
        {
            page.Item($"{PlanNames.Quote(task.Name)}, {names.Moment(task.Starts)}, can't: {Moves([.. task.Later])}");
        }
    }

    private string Moves(List<UploadMove> moves)
    {
        var more = moves.Count - MostOthers;
        var told = string.Join(", ", moves.Take(MostOthers).Select(Say));
        return more > 0 ? $"{told} and {more} more" : told;
    }

    private string Say(UploadMove move) => move.Days is { } days
        ? $"{PlanNames.Quote(move.Title)} {Words.Days(days)} later"
        : $"{PlanNames.Quote(move.Title)} without a date";

    private void WriteContests()
    {
        page.Heading("What is contested until then");
        if (why.Contests.Count == 0)
        {
            page.Paragraph("Nothing: no work waits for a station that other work has.");
        }

        foreach (var contest in why.Contests.Take(MostContests))
        {
            page.Item($"{SilenceWords.Capital(contest.Name)}: {Words.Minutes((int)Math.Min(int.MaxValue, contest.Minutes))} of waiting, all work together.");
            foreach (var rivalry in contest.Rivalries.Take(MostOthers))
            {
                page.Below(Say(rivalry));
            }
        }
    }

    private string Say(Rivalry rivalry)
    {
        var times = rivalry.Times == 1 ? "once" : $"{rivalry.Times} times";
        var first = $"{PlanNames.Quote(rivalry.Before.Name)} before {PlanNames.Quote(rivalry.First.Name)}";
        return rivalry.Winner == rivalry.Loser
            ? $"work of {Series(rivalry.Winner)} among itself, {times}: first {first}"
            : $"{Series(rivalry.Winner)} goes before {Series(rivalry.Loser)}, {times}: first {first}";
    }

    private string Series(Id id) => id.IsEmpty ? "the workshop" : names.Series(id);
}
