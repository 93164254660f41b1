using EpisodePlanner.Planning;

namespace EpisodePlanner.Writing;

/// <summary>Says of the shots of an episode how they stand and when they can still be taken.</summary>
internal sealed class ShotClock(Ledger ledger, PlannedEpisode episode)
{
    /// <summary>Every shot of the work that leads to the episode's milestones, in story order.</summary>
    public IEnumerable<ShotFact> Shots() => ledger.Story.TasksOf(episode)
        .SelectMany(task => task.Shots.Select(shot => Of(task, shot)));

    private ShotFact Of(WorkTask task, Shot shot)
    {
        var end = End(task, shot);
        return new ShotFact(task, shot, Standing(shot, end), Opening(task, shot.Moment), end);
    }

    private static ShotStanding Standing(Shot shot, ShotEnd? end) => shot.State switch
    {
        ShotState.Got => ShotStanding.Got,
        ShotState.Lost => ShotStanding.Lost,
        _ when end?.Happened is null => ShotStanding.ToFilm,
        _ => shot.OnceOnly ? ShotStanding.Lost : ShotStanding.Again,
    };

    private PlannedStage? Opening(WorkTask task, ShotMoment moment) => moment switch
    {
        ShotMoment.During => First(task),
        ShotMoment.After => Last(task),
        _ => null,
    };

    private ShotEnd? End(WorkTask task, Shot shot) => shot.Moment switch
    {
        ShotMoment.Before => Begin(task),
        ShotMoment.During => new ShotEnd(task.Name, true, Last(task), ledger.FinishedBy(task)),
        _ when shot.LostBy is { } id => ledger.Workshop.Tasks.Find(id) is { } later ? Begin(later) : null,
        _ => TailBegin(),
    };

    private ShotEnd Begin(WorkTask task) => new(task.Name, false, First(task), ledger.BegunBy(task));

    private ShotEnd? TailBegin() => ledger.Tail(episode).FirstOrDefault() is { } first
        ? new ShotEnd(TailWords.Whole, false, first, null)
        : null;

    private PlannedStage? First(WorkTask task) =>
        ledger.Left(task).Where(stage => stage.Start is not null).MinBy(stage => stage.Start);

    private PlannedStage? Last(WorkTask task) => ledger.Left(task).All(stage => stage.Finish is not null)
        ? ledger.Left(task).MaxBy(stage => stage.Finish)
        : null;
}
