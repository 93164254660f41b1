using EpisodePlanner.Planning;
using NodaTime;

namespace EpisodePlanner.Web.Features.Plans;

/// <summary>Tasks, stages and tails of a document.</summary>
internal sealed class WorkDocuments(Plan plan, DocumentValues values)
{
    private readonly ILookup<Id, PlannedStage> byTask = plan.Stages.Where(s => s.Key.IsTask).ToLookup(s => s.Key.Task);
    private readonly ILookup<Id, PlannedStage> byEpisode = plan.Stages.Where(s => s.Key.IsTail).ToLookup(s => s.Key.Episode);

    public IReadOnlyList<TaskEntry> Tasks() =>
        [.. plan.Request.Workshop.Tasks.Where(task => byTask.Contains(task.Id)).Select(Of)];

    public IReadOnlyList<StageEntry> Tail(Id episode) => [.. byEpisode[episode].OrderBy(s => s.Key.Part).Select(Entry)];

    private TaskEntry Of(WorkTask task)
    {
        var places = task.Stages.Index().ToDictionary(x => x.Item.Id, x => x.Index);
        var stages = byTask[task.Id].OrderBy(s => places[s.Key.Stage]).ToList();
        return new TaskEntry(
            $"{task.Id}", task.Name, DocumentValues.Name(stages[0].Series), Network(stages), Bench(stages), [.. stages.Select(Entry)]);
    }

    /// <summary>A stage of a task, a shot with time of its own, or a part of a tail.</summary>
    public StageEntry Entry(PlannedStage stage) => new(
        stage.Key.IsTail ? $"{stage.Key.Part}" : stage.Key.IsShot ? $"{stage.Key.Shot}" : $"{stage.Key.Stage}",
        stage.Name,
        DocumentValues.Word(stage.Kind),
        stage.Minutes,
        stage.Begun,
        stage.RunsAlone,
        Network([stage]),
        Bench([stage]),
        [.. stage.Parts.Select(Of)]);

    private PartEntry Of(PlannedPart part) => new(
        DocumentValues.Word(part.Kind), values.Moment(part.Start), values.Moment(part.End), [.. part.Stations.Select(id => $"{id}")]);

    private NetworkEntry? Network(List<PlannedStage> stages)
    {
        var dates = stages.Select(s => s.Network).OfType<NetworkDates>().ToList();
        return dates.Count < stages.Count ? null : new NetworkEntry(
            values.Moment(dates.Min(d => d.EarlyStart)),
            values.Moment(dates.Max(d => d.EarlyFinish)),
            values.Moment(dates.Min(d => d.LateStart)),
            values.Moment(dates.Max(d => d.LateFinish)),
            dates.Min(d => d.TotalFloat),
            dates[^1].FreeFloat,
            dates.Exists(d => d.Critical));
    }

    private BenchEntry? Bench(List<PlannedStage> stages)
    {
        if (stages.Any(s => s.Start is null) || stages.MinBy(s => s.Start)!.Cause is not { } cause)
        {
            return null;
        }

        Instant start = stages.Min(s => s.Start!.Value), finish = stages.Max(s => s.Finish!.Value);
        return new BenchEntry(values.Moment(start), values.Moment(finish), DocumentValues.Cause(cause));
    }
}
