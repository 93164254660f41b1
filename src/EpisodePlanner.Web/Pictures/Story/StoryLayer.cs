using EpisodePlanner.Planning;
using NodaTime;

namespace EpisodePlanner.Web.Pictures;

/// <summary>A milestone as a layer of a series' stack.</summary>
/// <param name="Milestone">The milestone.</param>
/// <param name="IsDone">Whether all work that leads to it is done.</param>
/// <param name="ScreenMinutes">Its likely minutes on screen.</param>
/// <param name="IsAssumed">Whether these were assumed.</param>
/// <param name="Episode">The title of the episode that shows it; null where it is in none.</param>
/// <param name="EndsEpisode">Whether it is the last that its episode shows.</param>
/// <param name="Date">The day on which that episode went out, or goes out by the plan.</param>
/// <param name="IsOut">Whether it is out.</param>
/// <param name="IsPinned">Whether its cut is pinned.</param>
public sealed record StoryLayer(
    Milestone Milestone,
    bool IsDone,
    decimal ScreenMinutes,
    bool IsAssumed,
    string? Episode,
    bool EndsEpisode,
    LocalDate? Date,
    bool IsOut,
    bool IsPinned)
{
    /// <summary>The layers of a series, in the order of the story.</summary>
    public static ValueList<StoryLayer> Of(Plan plan, Series series)
    {
        var workshop = plan.Request.Workshop;
        var open = plan.Stages.Where(stage => stage.Key.IsTask)
            .Select(stage => workshop.Tasks.Find(stage.Key.Task)?.Milestone)
            .ToHashSet();
        var shown = Shown(plan, series).ToLookup(pair => pair.Milestone, pair => pair.Episode);
        return series.Milestones.Select(milestone => Layer(milestone, !open.Contains(milestone.Id), shown[milestone.Id].FirstOrDefault()))
            .ToValueList();
    }

    private static StoryLayer Layer(Milestone milestone, bool isDone, Shows? episode) => new(
        milestone,
        isDone,
        milestone.ScreenMinutes?.Likely ?? Defaults.ScreenMinutes,
        milestone.ScreenMinutes is null,
        episode?.Title,
        episode is not null && episode.Last == milestone.Id,
        episode?.Date,
        episode?.IsOut ?? false,
        episode?.IsPinned ?? false);

    private static IEnumerable<(Id Milestone, Shows Episode)> Shown(Plan plan, Series series)
    {
        var workshop = plan.Request.Workshop;
        var uploads = workshop.Uploads.Where(upload => upload.Episode is not null).ToLookup(upload => upload.Episode!.Value);
        var made = workshop.Episodes.Where(e => e.Series == series.Id && uploads[e.Id].Any())
            .Select(e => new Shows(e.Title, e.Milestones, uploads[e.Id].First().Date, true, false));
        var planned = plan.Episodes.Where(e => e.Series == series.Id)
            .Select(e => new Shows(e.Title, e.Milestones, e.Date, false, workshop.Episodes.Find(e.Id)?.CutPinned == true));
        return made.Concat(planned).SelectMany(e => e.Milestones, (e, milestone) => (milestone, e));
    }

    private sealed record Shows(string Title, ValueList<Id> Milestones, LocalDate? Date, bool IsOut, bool IsPinned)
    {
        public Id Last => Milestones[^1];
    }
}
