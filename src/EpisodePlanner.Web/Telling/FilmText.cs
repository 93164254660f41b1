using EpisodePlanner.Planning;

namespace EpisodePlanner.Web.Telling;

/// <summary>What must be filmed before the work destroys it.</summary>
internal static class FilmText
{
    private const int Most = 6;

    public static void Write(ISheet page, ValueList<ShotToFilm> shots, PlanNames names)
    {
        page.Heading("What must be filmed first");
        var ahead = shots.Where(shot => !shot.Passed).ToList();
        foreach (var shot in ahead.Take(Most))
        {
            page.Item($"{Until(shot, names)}: {PlanNames.Quote(shot.Shot.Name)}{Nature(shot.Shot)}, {When(shot, names)}{Planned(shot, names)}.");
        }

        if (ahead.Count > Most)
        {
            page.Item($"{ahead.Count - Most} more later on.");
        }

        if (ahead.Count == 0)
        {
            page.Paragraph("Nothing that is missing will be destroyed by the work.");
        }

        foreach (var shot in shots.Where(shot => shot.Passed))
        {
            page.Item($"The moment has passed for {PlanNames.Quote(shot.Shot.Name)} ({PlanNames.Quote(shot.Task.Name)}): say whether it was got or is lost.");
        }
    }

    private static string Until(ShotToFilm shot, PlanNames names) =>
        shot.Until is { } until ? $"By {names.Moment(until)}"
        : shot.Shot.Moment == ShotMoment.After && shot.LostBy is null ? "When there is time"
        : "No date yet";

    /// <summary>The time that is kept for it; one during its task needs none.</summary>
    private static string Planned(ShotToFilm shot, PlanNames names) => shot.Planned switch
    {
        { Start: { } start, Finish: { } end } => $"; planned for {names.Span(start, end)}",
        { } => "; no time found for it",
        _ => "",
    };

    private static string Nature(Shot shot)
    {
        string?[] parts =
        [
            shot.Minutes > 0 ? Words.Minutes(shot.Minutes) : null,
            shot.OnceOnly ? "once only" : null,
            shot.Required ? "required" : null,
        ];
        return $" ({string.Join(", ", parts.OfType<string>())})";
    }

    private static string Before(ShotToFilm shot) =>
        shot.LostBy is { } lostBy ? $"{(shot.From is null ? "" : ",")} and before {PlanNames.Quote(lostBy.Name)} starts" : "";

    private static string When(ShotToFilm shot, PlanNames names)
    {
        var task = PlanNames.Quote(shot.Task.Name);
        return shot.Shot.Moment switch
        {
            ShotMoment.Before => $"before {task} starts",
            ShotMoment.During => $"while {task} goes on{(shot.From is { } start ? $", from {names.Moment(start)}" : "")}",
            _ => $"after {task}{(shot.From is { } done ? $", done {names.Moment(done)}" : "")}{Before(shot)}",
        };
    }
}
