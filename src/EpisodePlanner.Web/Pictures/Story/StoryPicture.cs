using System.Globalization;
using EpisodePlanner.Planning;

namespace EpisodePlanner.Web.Pictures;

/// <summary>
/// Draws a series as a stack that grows upward like a print: each milestone a layer as thick as its minutes on screen,
/// solid when done, hatched when planned, with a line where an episode ends and its date.
/// </summary>
public static class StoryPicture
{
    /// <summary>The width of the drawing.</summary>
    public const int Width = 380;

    private const double Left = 8;
    private const double Right = 160;
    private const double MostPerMinute = 5;
    private const double TypicalHeight = 560;
    private const double Thinnest = 16;
    private const double LetterSize = 12;
    private const double EndHeight = 22;

    /// <summary>Draws a series of a plan.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="series">One of its workshop's series.</param>
    /// <param name="name">Makes the ids in the drawing differ from those of others on the page.</param>
    /// <param name="open">By milestone: words at a thin broken line where an episode could end besides; null for none.</param>
    public static Picture Draw(Plan plan, Series series, string name, IReadOnlyDictionary<Id, string>? open = null)
    {
        var layers = StoryLayer.Of(plan, series);
        var canvas = new Canvas(name, Width);
        var perMinute = Math.Min(MostPerMinute, TypicalHeight / Math.Max(1, (double)layers.Sum(l => l.ScreenMinutes)));
        var y = 6.0;
        foreach (var layer in layers.Reverse())
        {
            y = layer.EndsEpisode ? End(canvas, layer, y)
                : open is not null && open.TryGetValue(layer.Milestone.Id, out var words) ? Open(canvas, words, y)
                : y;
            y = Layer(canvas, layer, y, perMinute);
        }

        canvas.Line(Left - 6, y, Right + 6, y, "p-cut");
        return canvas.Finish(
            $"The story of {series.Name}",
            $"Milestones from below upward, each as thick as its minutes on screen: {layers.Count(l => l.IsDone)} of "
            + $"{layers.Count} done and solid, the others hatched. A line stands where an episode ends{(open is { Count: > 0 } ? ", a thin broken one where one could" : "")}.",
            y + 6);
    }

    private static double Layer(Canvas canvas, StoryLayer layer, double y, double perMinute)
    {
        var height = Math.Max(Thinnest, (double)layer.ScreenMinutes * perMinute);
        var tells = $"{layer.Milestone.Name}: {Minutes(layer)}, {(layer.IsDone ? "done" : "planned")}";
        if (layer.IsDone)
        {
            canvas.Rect(Left, y, Right - Left, height - 1.5, "p-done", tells);
        }
        else
        {
            canvas.Hatched(Left, y, Right - Left, height - 1.5, "planned", tells);
        }

        canvas.TextWithin(Right + 10, y + (height / 2) + 4, Width - Right - 12, layer.Milestone.Name, "p-label", LetterSize);
        return y + height;
    }

    private static double End(Canvas canvas, StoryLayer layer, double y)
    {
        var day = layer.Date?.ToString("ddd d MMM", CultureInfo.InvariantCulture) ?? "no date";
        var words = layer.IsOut ? $"out {day}" : layer.IsPinned ? $"{day}, pinned" : day;
        canvas.Line(Left - 6, y + EndHeight - 4, Width - 8, y + EndHeight - 4, "p-cut");
        canvas.Text(Left, y + EndHeight - 9, words, "p-chain-words");
        var after = Left + Canvas.WidthOf(words, 10) + 10;
        canvas.TextWithin(after, y + EndHeight - 9, Width - after - 8, $"\u201c{layer.Episode}\u201d", "p-small", 10);
        return y + EndHeight - 1;
    }

    private static double Open(Canvas canvas, string words, double y)
    {
        canvas.Line(Left - 6, y + EndHeight - 4, Width - 8, y + EndHeight - 4, "p-open");
        canvas.TextWithin(Left, y + EndHeight - 9, Width - Left - 8, words, "p-small", 10);
        return y + EndHeight - 1;
    }

    private static string Minutes(StoryLayer layer) =>
        string.Create(CultureInfo.InvariantCulture, $"{layer.ScreenMinutes:0.#} min on screen{(layer.IsAssumed ? " (assumed)" : "")}");
}
