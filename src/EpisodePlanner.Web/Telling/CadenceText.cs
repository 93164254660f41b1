using EpisodePlanner.Planning;

namespace EpisodePlanner.Web.Telling;

/// <summary>What can be kept up over all series, and which promise breaks first.</summary>
internal static class CadenceText
{
    /// <summary>Writes it.</summary>
    public static void Write(ISheet page, Cadence cadence)
    {
        var words = new CadenceWords(cadence);
        page.Heading("What hands can keep up");
        page.Paragraph(words.Kept);
        page.Paragraph(words.Rate);
        page.Heading("Whether all promises can hold");
        page.Paragraph(words.Verdict);
        foreach (var line in new[] { words.Breaks, words.Nearest }.OfType<string>())
        {
            page.Paragraph(line);
        }

        if (words.Rotation is { } rotation)
        {
            page.Paragraph($"One order of turns that keeps them on the slots, over and over: {rotation}.");
        }

        page.Heading("What each promise asks for");
        foreach (var series in cadence.Series)
        {
            page.Item($"{series.Series.Name}: {CadenceWords.Asks(series)}");
            page.Below(CadenceWords.Cost(series));
        }

        page.Heading("If one of them rests openly");
        foreach (var resting in cadence.Resting)
        {
            page.Item(words.Say(resting));
        }
    }
}
