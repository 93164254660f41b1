using EpisodePlanner.Planning;
using EpisodePlanner.Web.Features.Plans;

namespace EpisodePlanner.Web.Telling;

/// <summary>What was taken for granted, and the one question whose answer changes the plan most.</summary>
internal static class AssumedText
{
    private const int MinutesADay = 1_440;

    public static void Write(ISheet page, PlanAdvice advice)
    {
        page.Heading("What was assumed");
        if (AssumptionRanking.Question(advice.Assumed) is not { } question)
        {
            page.Paragraph("Nothing that was needed.");
            return;
        }

        page.Paragraph($"The one question: {question.Ask}");
        foreach (var assumption in advice.Assumed)
        {
            page.Item($"{SilenceWords.Capital(assumption.Says)}; {Measure(assumption)}.");
        }
    }

    /// <summary>How far another answer was seen to move the next upload.</summary>
    public static string Measure(Assumption assumption) => assumption switch
    {
        { MovesMinutes: null, Tried: "" } => "moves no date yet",
        { MovesMinutes: null } => "not tried",
        { MovesMinutes: 0 } => $"with {assumption.Tried}, no difference",
        { MovesMinutes: { } minutes } => $"with {assumption.Tried}, the next upload comes {Length(Math.Abs(minutes))} {(minutes < 0 ? "earlier" : "later")}",
    };

    private static string Length(int minutes) => minutes < MinutesADay
        ? Words.Minutes(minutes)
        : Words.Days((int)Math.Round(minutes / (double)MinutesADay));
}
