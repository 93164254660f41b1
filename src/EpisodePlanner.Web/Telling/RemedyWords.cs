using EpisodePlanner.Planning;
using NodaTime;

namespace EpisodePlanner.Web.Telling;

/// <summary>A silence and what can be done about it, in words that a terminal and a page share.</summary>
internal sealed class RemedyWords(SilenceRemedies about)
{
    /// <summary>How things of the plan are called.</summary>
    public PlanNames Names { get; } = new(about.Plan);

    /// <summary>Whose silence, when it goes beyond the promise and what ends it.</summary>
    public string First => SilenceWords.First(about.Outlook, about.Alarm, about.Plan, Names);

    /// <summary>"the promise holds", or how far beyond it is left.</summary>
    public static string Wins(Remedy remedy) => remedy switch
    {
        { DaysWon: <= 0 } => "wins no day",
        { OverThen: 0 } => $"wins {Words.Days(remedy.DaysWon)}: the promise holds",
        _ => $"wins {Words.Days(remedy.DaysWon)}; {Words.Days(remedy.OverThen)} beyond the promise are left",
    };

    /// <summary>"16 h more work; later: ...", or that it costs no hours.</summary>
    public static string Costs(Remedy remedy)
    {
        var minutes = (int)Math.Round(remedy.Difference.HoursMore * 60);
        var hours = minutes == 0 ? "no hours" : $"{Words.Work(Math.Abs(minutes))} {(minutes > 0 ? "more" : "less")} work";
        return remedy.Later.Count == 0 ? $"{hours}, and no upload later" : $"{hours}; later: {WhyWords.Moves(remedy.Later)}";
    }

    /// <summary>Where nothing wins a day: the first slot that can hold; null where something does.</summary>
    public string? Nothing => about.Helping.Count > 0 ? null : about.Alarm.Ends is { } day
        ? $"Nothing that could be tried makes this silence shorter. The first slot that can hold is {Names.Day(day)}."
        : "Nothing that could be tried ends this silence.";

    /// <summary>A short notice to supporters for then, from what the plan knows; null where something helps.</summary>
    public string? Notice
    {
        get
        {
            if (about.Helping.Count > 0 || about.Alarm.Ends is not { } day || about.Outlook.LastUpload is not { } last)
            {
                return null;
            }

            var name = about.Outlook.Series.IsEmpty ? "The next upload" : $"The next episode of {about.Outlook.Name}";
            return $"{name} is planned for {Names.Day(day)}, {Words.Days(Period.DaysBetween(last, day))} after the last one and "
                + $"{Words.Days(about.Alarm.DaysOver)} later than promised. We know of no way to bring it forward.";
        }
    }

    /// <summary>What resting openly would come to; null where it is no question.</summary>
    public string? Rest => about.Rest is { } rest
        ? $"If {rest.Says}: nothing counts as too quiet until then; {Costs(rest)}."
        : null;
}
