using EpisodePlanner.Planning;
using EpisodePlanner.Web.Pages;

namespace EpisodePlanner.Web.Features.AllSeries;

/// <summary>A task in a list.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Name">Its name.</param>
/// <param name="Milestone">The milestone it leads to.</param>
/// <param name="When">When it is done by the plan, or that it is done.</param>
/// <param name="Left">What is left of it.</param>
/// <param name="Next">Its next stretch of work; null where none is left.</param>
public sealed record WorkLineView(Id Id, string Name, string Milestone, string When, string Left, PlannedStage? Next)
{
    /// <summary>The tasks that lead to a series' milestones or belong to it: those to come by date, then those done.</summary>
    public static IEnumerable<WorkLineView> Of(DeskView view, Series series)
    {
        var milestones = series.Milestones.ToDictionary(milestone => milestone.Id, milestone => milestone.Name);
        var left = view.Plan.Stages.Where(stage => stage.Key.IsTask).ToLookup(stage => stage.Key.Task);
        return view.Workshop.Tasks
            .Where(task => task.Series == series.Id || (task.Milestone is { } m && milestones.ContainsKey(m)))
            .Select(task => (task, stages: left[task.Id].ToList()))
            .OrderBy(work => work.stages.Count == 0)
            .ThenBy(work => work.stages.Min(stage => stage.Start) ?? NodaTime.Instant.MaxValue)
            .Select(work => Line(view, work.task, work.stages, milestones));
    }

    private static WorkLineView Line(DeskView view, WorkTask task, List<PlannedStage> stages, Dictionary<Id, string> milestones) => new(
        task.Id,
        task.Name,
        task.Milestone is { } milestone ? milestones.GetValueOrDefault(milestone, "") : "",
        WhenOf(view.Plan, stages),
        stages.Count == 0 ? "" : Words.Minutes(stages.Sum(stage => stage.Minutes)),
        stages.Find(stage => stage.Start is not null) ?? stages.FirstOrDefault());

    private static string WhenOf(Plan plan, List<PlannedStage> stages) => stages switch
    {
        [] => "done",
        _ when stages.Any(stage => stage.Finish is null) => "has no date",
        _ => $"{Moment(plan, stages.Min(stage => stage.Start)!.Value)} to {Moment(plan, stages.Max(stage => stage.Finish)!.Value)}",
    };

    private static string Moment(Plan plan, NodaTime.Instant moment) => Words.Moment(moment.InZone(plan.Zone));
}
