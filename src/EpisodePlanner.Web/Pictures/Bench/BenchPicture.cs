using System.Globalization;
using EpisodePlanner.Planning;
using NodaTime;

namespace EpisodePlanner.Web.Pictures;

/// <summary>
/// Draws the bench: one row a day, from noon to noon, so that an evening and its night are unbroken. Hands are solid
/// blocks, machine runs hatched bars under them, closed hours shaded; the chain of the next upload is one dark doubled
/// line with its reasons written on it.
/// </summary>
public sealed class BenchPicture
{
    private const double Top = 26;
    private const double HandsHeight = 16;
    private const double RunHeight = 8;
    private const double ChainHeight = 16;
    private const double OutHeight = 15;
    private const double Gap = 3;
    private const double NarrowRow = 30;
    private const double LetterSize = 10;

    private readonly Plan plan;
    private readonly BenchView view;
    private readonly Func<StageKey, string?> link;
    private readonly Canvas canvas;
    private readonly ILookup<LocalDate, (LocalDateTime Moment, PlannedEpisode Episode)> uploads;
    private readonly bool isNarrow;

    private BenchPicture(Plan plan, BenchView view, string name, Func<StageKey, string?> link)
    {
        (this.plan, this.view, this.link) = (plan, view, link);
        canvas = new Canvas(name, view.Width);
        isNarrow = view.Width < 600;
        uploads = plan.Episodes
            .Where(episode => episode.Publish is not null)
            .Select(episode => (Moment: episode.Publish!.Value.InZone(plan.Zone).LocalDateTime, episode))
            .ToLookup(upload => BenchView.RowOf(upload.Moment));
    }

    private double Left => isNarrow ? 48 : 96;

    private int HourStep => isNarrow ? 6 : 3;

    private double PerMinute => (view.Width - Left - 4) / 1440;

    /// <summary>Draws a view of a plan.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="view">What part of it.</param>
    /// <param name="name">Makes the ids in the drawing differ from those of others on the page.</param>
    /// <param name="link">Where a block leads; null for nowhere.</param>
    public static Picture Draw(Plan plan, BenchView view, string name, Func<StageKey, string?> link) =>
        new BenchPicture(plan, view, name, link).Draw();

    private Picture Draw()
    {
        var rows = BenchRows.Of(plan, view);
        var chain = BenchChain.Of(plan, plan.NextUpload, view).ToLookup(stretch => stretch.Row);
        var y = Top;
        for (var i = 0; i < rows.Count; i++)
        {
            y = Row(rows[i], [.. chain[i]], y);
        }

        Hours();
        return canvas.Finish(
            $"The bench from {Words.Day(view.FirstDay)}, {Words.Days(view.Days)}",
            Description(),
            y + 2);
    }

    private string Description() =>
        "One row a day, from noon to noon. Solid blocks are hands at work, hatched bars machine runs, dashed frames waits; "
        + "shaded hours are closed. The doubled line is what decides the next upload"
        + (plan.NextUpload is { } next ? $", \u201c{next.Title}\u201d on {Words.Day(next.Date!.Value)}." : "; there is none.");

    private double Row(BenchRow row, IReadOnlyList<ChainStretch> chain, double y)
    {
        var lanes = Math.Max(1, row.Hands.Count);
        var above = Gap + (uploads.Contains(row.Day) ? OutHeight : 0);
        var below = y + above;
        var content = (lanes * HandsHeight) + (row.Machines.Count * RunHeight) + (chain.Count > 0 ? ChainHeight : 0);
        var height = Math.Max(above + content + Gap, isNarrow ? NarrowRow : 0);
        Shade(row, y, height);
        DayLabel(row.Day, y);
        foreach (var lane in row.Hands)
        {
            Blocks(lane, below);
            below += HandsHeight;
        }

        below = y + above + (lanes * HandsHeight);
        foreach (var lane in row.Machines)
        {
            Runs(lane, below);
            below += RunHeight;
        }

        Chain(chain, below);
        Uploads(row.Day, y, height);
        canvas.Line(0, y + height, view.Width, y + height, "p-rule");
        return y + height;
    }

    private void Shade(BenchRow row, double y, double height)
    {
        canvas.Rect(Left, y, view.Width - Left - 4, height, "p-closed");
        foreach (var (from, to) in row.Open)
        {
            canvas.Rect(X(from), y, (to - from) * PerMinute, height, "p-paper");
        }

        for (var hour = 0; hour <= 24; hour += HourStep)
        {
            canvas.Line(X(hour * 60), y, X(hour * 60), y + height, "p-rule");
        }
    }

    private void DayLabel(LocalDate day, double y)
    {
        var weekday = day.ToString("ddd", CultureInfo.InvariantCulture);
        var date = day.ToString(isNarrow ? "d/M" : "d MMM", CultureInfo.InvariantCulture);
        canvas.Text(2, y + 14, isNarrow ? weekday : $"{weekday} {date}", "p-day");
        if (isNarrow)
        {
            canvas.Text(2, y + 25, day.ToString("d MMM", CultureInfo.InvariantCulture), "p-small");
        }
    }

    private void Blocks(Lane lane, double y)
    {
        foreach (var bar in lane.Bars)
        {
            var (x, width) = (X(bar.From), (bar.To - bar.From) * PerMinute);
            canvas.Rect(x, y + 1, Math.Max(1, width - 1), HandsHeight - 2, "p-hands", Tells(bar, lane.Name), link(bar.Stage.Key));
            canvas.TextWithin(x + 3, y + 11.5, width - 6, bar.Stage.Name, "p-hands-words", LetterSize);
        }
    }

    private void Runs(Lane lane, double y)
    {
        foreach (var bar in lane.Bars)
        {
            var (x, width) = (X(bar.From), (bar.To - bar.From) * PerMinute);
            var tells = Tells(bar, lane.Name);
            if (bar.Kind == BarKind.Run)
            {
                canvas.Hatched(x, y + 1, width, RunHeight - 2, "run", tells, link(bar.Stage.Key));
            }
            else
            {
                canvas.Rect(x, y + 1, width, RunHeight - 2, bar.Kind == BarKind.Held ? "p-held" : "p-wait", tells, link(bar.Stage.Key));
            }
        }
    }

    private void Chain(IReadOnlyList<ChainStretch> chain, double y)
    {
        var line = y + ChainHeight - 4;
        foreach (var stretch in chain)
        {
            canvas.Line(X(stretch.From), line, X(stretch.To), line, "p-chain");
            canvas.Line(X(stretch.From), line, X(stretch.To), line, "p-chain-gap");
        }

        var told = chain.Where(stretch => stretch.Reason is not null).ToList();
        for (var i = 0; i < told.Count; i++)
        {
            var end = i + 1 < told.Count ? X(told[i + 1].From) : view.Width - 4;
            canvas.TextWithin(X(told[i].From) + 2, line - 4, end - X(told[i].From) - 6, told[i].Reason!, "p-chain-words", LetterSize);
        }
    }

    private void Uploads(LocalDate day, double y, double height)
    {
        foreach (var (moment, episode) in uploads[day])
        {
            var x = X(BenchRows.MinutesAfterNoon(moment, day));
            canvas.Line(x, y, x, y + height, "p-cut");
            canvas.Dot(x, y + 6, 4, "p-out", $"\u201c{episode.Title}\u201d goes out {Words.Time(moment.TimeOfDay)}");
            var words = $"out {Words.Time(moment.TimeOfDay)} \u201c{episode.Title}\u201d";
            canvas.TextWithin(x + 8, y + 12, view.Width - x - 12, words, "p-chain-words", LetterSize);
        }
    }

    private void Hours()
    {
        for (var hour = 0; hour <= 24; hour += HourStep)
        {
            var x = X(hour * 60);
            var words = ((hour + 12) % 24).ToString("00", CultureInfo.InvariantCulture) + ":00";
            canvas.Text(Math.Min(x, view.Width - Canvas.WidthOf(words, LetterSize) - 4), 14, words, "p-small");
        }

        var now = BenchRows.MinutesAfterNoon(plan.Now.LocalDateTime, view.FirstDay);
        if (now is >= 0 and < 1440)
        {
            canvas.Line(X(now), Top - 8, X(now), Top + 30, "p-now");
        }
    }

    private static string Tells(Bar bar, string lane) => bar.Kind switch
    {
        BarKind.Hands => $"{bar.Stage.Name}: {lane}, {Clock(bar.From)} to {Clock(bar.To)}",
        BarKind.Run => $"{bar.Stage.Name}: {lane} runs, {Clock(bar.From)} to {Clock(bar.To)}",
        BarKind.Held => $"{bar.Stage.Name}: {lane} waits to be unloaded, {Clock(bar.From)} to {Clock(bar.To)}",
        _ => $"{bar.Stage.Name}: waits, {Clock(bar.From)} to {Clock(bar.To)}",
    };

    private static string Clock(int minutes) =>
        string.Create(CultureInfo.InvariantCulture, $"{(minutes / 60 + 12) % 24:00}:{minutes % 60:00}");

    private double X(double minutes) => Left + (minutes * PerMinute);
}
