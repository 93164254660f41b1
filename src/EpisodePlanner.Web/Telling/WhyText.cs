using EpisodePlanner.Planning;

namespace EpisodePlanner.Web.Telling;

/// <summary>Why an episode goes out when it does, what would bring it forward, what can wait, and what is contested.</summary>
internal sealed class WhyText(ISheet page, EpisodeWhy why)
{
    private const int MostSteps = 12;
    private const int MostContests = 5;
    private const int MostRivalries = 3;
    private const string NothingYet = "Stopped before anything of this was tried.";

    private readonly WhyWords words = new(why);

    public void Write()
    {
        WriteDate();
        WriteWhatIfs();
        WriteDayLater();
        WriteContests();
    }

    /// <summary>The date with its chain.</summary>
    public void WriteDate()
    {
        page.Heading(words.Names.Full(why.Episode));
        page.Paragraph(words.Date);
        new ChainText(page, why.Plan).Write(why.Episode, MostSteps);
    }

    private void WriteWhatIfs()
    {
        page.Heading("What would bring it forward");
        foreach (var tried in words.Winning)
        {
            page.Item($"{SilenceWords.Capital(words.Won(tried))}: {tried.Idea.Says}.");
            if (WhyWords.Later(tried) is { Length: > 0 } later)
            {
                page.Below($"later then: {later}");
            }

            foreach (var caution in tried.Idea.Cautions)
            {
                page.Below(CautionWords.Of(caution));
            }
        }

        var inVain = string.Join("; ", words.InVain);
        if (inVain.Length > 0)
        {
            page.Paragraph($"Tried without winning anything: {inVain}.");
        }
        else if (why.WhatIfs.Count == 0)
        {
            page.Paragraph(why.IsComplete ? "Nothing that this planner knows to try." : NothingYet);
        }
    }

    private void WriteDayLater()
    {
        page.Heading("What can wait a day");
        var canWait = string.Join(", ", words.CanWait);
        if (why.DayLater.Count == 0)
        {
            page.Paragraph(why.IsComplete ? "No work is planned to begin in the next two weeks." : NothingYet);
        }
        else if (canWait.Length > 0)
        {
            page.Paragraph($"These can begin a day later without moving any upload, each by itself: {canWait}.");
        }

        foreach (var task in why.DayLater.Where(task => !task.CanWait))
        {
            page.Item($"{PlanNames.Quote(task.Name)}, {words.Names.Moment(task.Starts)}, can't: {WhyWords.Moves(task.Later)}");
        }
    }

    private void WriteContests()
    {
        page.Heading("What is contested until then");
        if (why.Contests.Count == 0)
        {
            page.Paragraph("Nothing: no work waits for a station that other work has.");
        }

        foreach (var contest in why.Contests.Take(MostContests))
        {
            page.Item($"{SilenceWords.Capital(contest.Name)}: {WhyWords.Waited(contest)}.");
            foreach (var rivalry in contest.Rivalries.Take(MostRivalries))
            {
                page.Below(words.Say(rivalry));
            }
        }
    }
}
