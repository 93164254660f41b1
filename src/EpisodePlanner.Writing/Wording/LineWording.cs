using EpisodePlanner.Planning;
using NodaTime;

namespace EpisodePlanner.Writing;

/// <summary>Timed lines in sentences: may they be said on the day of the upload?</summary>
internal static class LineWording
{
    public static Block Line(TimedLine line, LocalDate? date) => Say.Item([Main(line, date), .. Due(line, date)]);

    /// <summary>A line no episode carries yet that is true on the day.</summary>
    public static Block Free(TimedLine line) => Say.Item(Say.From(
        $"No episode carries {InWords.Quoted(line.Text)} yet. It is true on that day, and until {InWords.Day(line.Until)}.",
        Fact.Of(line)));

    private static Sentence Main(TimedLine line, LocalDate? date)
    {
        var text = InWords.Quoted(line.Text);
        var fact = Fact.Of(line);
        return date switch
        {
            null => Say.From(
                $"{text} is true from {InWords.Day(line.From)} until {InWords.Day(line.Until)}; the upload has no date yet.",
                fact),
            { } day when day > line.Until =>
                Say.From($"Leave out {text}: it runs out on {InWords.Day(line.Until)}, before the upload.", fact),
            { } day when day < line.From =>
                Say.From($"Leave out {text}: it is not true before {InWords.Day(line.From)}.", fact),
            _ => Say.From($"Say {text}. It is true until {InWords.Day(line.Until)}.", fact),
        };
    }

    private static IEnumerable<Sentence> Due(TimedLine line, LocalDate? date) => line.DueBy switch
    {
        null => [],
        { } due when date is { } day && day > due =>
        [
            Say.From(
                $"It is due by {InWords.Day(due)}, before the planned day: whoever paid for it must agree.",
                Fact.Of(line)),
        ],
        { } due => [Say.From($"It is due by {InWords.Day(due)}.", Fact.Of(line))],
    };
}
