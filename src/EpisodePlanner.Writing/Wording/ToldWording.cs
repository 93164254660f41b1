using EpisodePlanner.Planning;
using NodaTime;

namespace EpisodePlanner.Writing;

/// <summary>A date that was told, and what the plan says now.</summary>
internal static class ToldWording
{
    public static Block Line(ToldDate told, string title, PlannedEpisode? planned)
    {
        var said = $"{InWords.Day(told.Date)} was told to {told.To} on {InWords.Day(told.ToldOn)}";
        var facts = planned is null ? [Fact.Of(told)] : new[] { Fact.Of(told), Fact.Of(planned) };
        return Say.Item(
            Say.From($"{InWords.Quoted(title)}: {said}.", Fact.Of(told)),
            Say.From($"{Now(told, planned?.Date)}", facts));
    }

    private static Markdown Now(ToldDate told, LocalDate? date) => date switch
    {
        null => Markdown.Of($"It has no date now."),
        { } day when day == told.Date => Markdown.Of($"The plan still says so."),
        { } day when day > told.Date => Moved(day, Period.DaysBetween(told.Date, day), "later"),
        { } day => Moved(day, Period.DaysBetween(day, told.Date), "earlier"),
    };

    private static Markdown Moved(LocalDate to, int days, string way) =>
        Markdown.Of($"It is now planned for {InWords.Day(to)}, {InWords.Days(days)} {way}.");
}
