using System.Globalization;
using EpisodePlanner.Planning;
using NodaTime;

namespace EpisodePlanner.Web.Pictures;

/// <summary>What part of the silences is drawn.</summary>
/// <param name="FirstDay">The first day.</param>
/// <param name="LastDay">The last day, after the first.</param>
/// <param name="Width">The width of the drawing.</param>
public sealed record SilenceView(LocalDate FirstDay, LocalDate LastDay, int Width)
{
    /// <summary>Two months back and so many weeks ahead.</summary>
    public static SilenceView Around(Plan plan, int weeksAhead, int width) =>
        new(plan.Now.Date.PlusWeeks(-9), plan.Now.Date.PlusWeeks(weeksAhead), width);
}

/// <summary>
/// Draws silence: for each series the days since its last upload as a sawtooth that climbs and drops at each upload, with
/// the promise as a level line and what goes beyond it marked.
/// </summary>
public sealed class SilencePicture
{
    private const double RowHeight = 104;
    private const double Top = 24;
    private const double LetterSize = 11;

    private readonly Plan plan;
    private readonly SilenceView view;
    private readonly Canvas canvas;

    private SilencePicture(Plan plan, SilenceView view, string name)
    {
        (this.plan, this.view) = (plan, view);
        canvas = new Canvas(name, view.Width);
    }

    private double Right => view.Width - 8;

    /// <summary>Draws a view of a plan's silences.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="view">What part of them.</param>
    /// <param name="name">Makes the ids in the drawing differ from those of others on the page.</param>
    public static Picture Draw(Plan plan, SilenceView view, string name) => new SilencePicture(plan, view, name).Draw();

    private Picture Draw()
    {
        Months(Top + ((plan.Series.Count + 1) * RowHeight));
        var y = Top;
        foreach (var outlook in plan.Series.Append(plan.Channel))
        {
            Sawtooth(outlook, y);
            y += RowHeight;
        }

        return canvas.Finish(
            $"Silences from {Words.ShortDay(view.FirstDay)} to {Words.ShortDay(view.LastDay)}",
            "For each series the days since its last upload: the line climbs a day each day and drops at an upload. The full "
            + "line is what was, the dashed line what is planned; the level line is the promise, and the filled part lies beyond it.",
            y);
    }

    private void Sawtooth(Outlook outlook, double y)
    {
        var promise = outlook.Promise.LongestSilenceDays;
        var silences = Silences(outlook);
        var most = Math.Max(silences.Select(s => s.Days).DefaultIfEmpty(0).Max(), promise ?? 0) * 1.15;
        var teeth = new Teeth(y + 26, y + RowHeight - 10, Math.Max(7, most), X);
        canvas.Line(8, teeth.Bottom, Right, teeth.Bottom, "p-rule");
        canvas.Text(8, y + 14, Capital(outlook.Name), "p-day");
        canvas.Text(8 + Canvas.WidthOf(outlook.Name, 13.5) + 8, y + 14, Told(outlook), "p-small");
        foreach (var silence in silences)
        {
            Tooth(teeth, silence, promise, outlook.State == SeriesState.Active);
        }

        if (promise is { } days)
        {
            canvas.Line(8, teeth.Y(days), Right, teeth.Y(days), "p-promise");
        }
    }

    private List<Silence> Silences(Outlook outlook) => [.. outlook.Past
        .Where(silence => !silence.OpenEnded)
        .Concat(outlook.Forecast)
        .Where(silence => (silence.To ?? view.LastDay) >= view.FirstDay && silence.From <= view.LastDay)
        .Select(silence => silence with { Days = Period.DaysBetween(silence.From, Last(silence)) })];

    private LocalDate Last(Silence silence) => LocalDate.Min(silence.To ?? view.LastDay, view.LastDay);

    private void Tooth(Teeth teeth, Silence silence, int? promise, bool isActive)
    {
        var today = plan.Now.Date;
        var last = Last(silence);
        var from = LocalDate.Max(silence.From, view.FirstDay);
        if (promise is { } days && silence.Days > days && isActive)
        {
            Over(teeth, silence, days, last);
        }

        if (from < today)
        {
            teeth.Climb(canvas, silence.From, from, LocalDate.Min(last, today), silence.To is not null && last <= today, "p-past");
        }

        if (last > today)
        {
            teeth.Climb(canvas, silence.From, LocalDate.Max(from, today), last, silence.To == last, "p-ahead");
        }

        if (silence.To is { } upload && upload <= view.LastDay)
        {
            canvas.Dot(X(upload), teeth.Bottom, 3.5, "p-out", $"Upload on {Words.Day(upload)} after {Words.Days(silence.Days)}");
        }
    }

    private void Over(Teeth teeth, Silence silence, int promise, LocalDate last)
    {
        var due = silence.From.PlusDays(promise);
        var start = LocalDate.Max(due, view.FirstDay);
        canvas.Path(
            [
                (X(start), teeth.Y(promise)),
                (X(start), teeth.Y(Period.DaysBetween(silence.From, start))),
                (X(last), teeth.Y(silence.Days)),
                (X(last), teeth.Y(promise)),
            ],
            "p-over");
        if (last >= plan.Now.Date)
        {
            var words = $"{silence.Days - promise} over";
            canvas.Text(X(last) - Canvas.WidthOf(words, LetterSize) - 3, teeth.Y(silence.Days) + 1, words, "p-over-words");
        }
    }

    private static string Told(Outlook outlook) => outlook switch
    {
        { State: SeriesState.Finished } => "finished",
        { State: SeriesState.Resting, Promise.LongestSilenceDays: { } days } => $"resting; else it promises {Words.Days(days)} at most",
        { State: SeriesState.Resting } => "resting",
        { Promise.UploadsPerMonth: { } count } => $"promises {count} a month{Since(outlook)}",
        { Promise.LongestSilenceDays: { } days } => $"promises {Words.Days(days)} at most{Since(outlook)}",
        _ => Since(outlook).TrimStart(',', ' '),
    };

    private static string Since(Outlook outlook) =>
        outlook.DaysSilent is { } days ? $", {Words.Days(days)} since the last upload" : ", nothing is out yet";

    private void Months(double bottom)
    {
        for (var month = view.FirstDay.With(DateAdjusters.StartOfMonth).PlusMonths(1); month < view.LastDay; month = month.PlusMonths(1))
        {
            canvas.Line(X(month), Top - 8, X(month), bottom - 6, "p-rule");
            canvas.Text(X(month) + 3, 14, month.ToString("MMM", CultureInfo.InvariantCulture), "p-small");
        }

        canvas.Line(X(plan.Now.Date), Top - 8, X(plan.Now.Date), bottom - 6, "p-now");
        canvas.Text(X(plan.Now.Date) + 3, Top + 2, "today", "p-small");
    }

    private double X(LocalDate day) =>
        8 + ((Right - 8) * Period.DaysBetween(view.FirstDay, day) / Period.DaysBetween(view.FirstDay, view.LastDay));

    private static string Capital(string name) => char.ToUpperInvariant(name[0]) + name[1..];

    /// <summary>The scale of one series: days upward.</summary>
    private sealed record Teeth(double Top, double Bottom, double Most, Func<LocalDate, double> X)
    {
        public double Y(double days) => Bottom - ((Bottom - Top) * days / Most);

        public void Climb(Canvas canvas, LocalDate since, LocalDate from, LocalDate to, bool drops, string style)
        {
            (double, double)[] line =
            [
                (X(from), Y(Period.DaysBetween(since, from))),
                (X(to), Y(Period.DaysBetween(since, to))),
            ];
            canvas.Path(drops ? [.. line, (X(to), Bottom)] : line, style);
        }
    }
}
