using EpisodePlanner.Planning;
using EpisodePlanner.Web.Features.Plans;

namespace EpisodePlanner.Web.Telling;

/// <summary>The plan for people: its answers in the order in which they are asked.</summary>
internal static class PlanText
{
    public static void Write(PlanAdvice advice, ISheet page)
    {
        var names = new PlanNames(advice.Plan);
        var chains = new ChainText(page, advice.Plan);
        WriteHead(advice, page);
        NextUploadText.Write(page, advice.Plan, names, chains);
        SilenceText.Write(page, advice, names, chains);
        NextThingText.Write(page, advice.Plan, advice.Next, names);
        TonightText.Write(page, advice.Plan, advice.Tonight, names);
        FilmText.Write(page, advice.FilmFirst, names);
        OutsideText.Write(page, advice.Outside, names);
        MovedText.Write(page, advice.Plan, advice.Moved, names);
        FindingsText.Write(page, advice.Plan);
        AssumedText.Write(page, advice);
    }

    private static void WriteHead(PlanAdvice advice, ISheet page)
    {
        var now = advice.Plan.Now;
        page.Heading($"{advice.Plan.Request.Workshop.Name}, planned {Words.Day(now.Date)} {now.Year}, {Words.Time(now.TimeOfDay)} ({now.Zone.Id})");
        if (advice.MovedWeeks is { } weeks)
        {
            page.Paragraph(weeks == 0
                ? "A demo; its dates are those it was written with."
                : $"A demo; its dates are moved by {Weeks(Math.Abs(weeks))} {(weeks > 0 ? "forward" : "back")}, so that it is as alive today as when it was written.");
        }
    }

    private static string Weeks(int weeks) => weeks == 1 ? "1 week" : $"{weeks} weeks";
}
