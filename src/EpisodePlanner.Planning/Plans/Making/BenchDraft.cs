using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Planning;

/// <summary>One stage of the bench problem with what it stands for.</summary>
/// <param name="Key">Which stretch of work.</param>
/// <param name="Stage">The stage.</param>
/// <param name="Series">Its series; empty for work on the workshop.</param>
/// <param name="Work">The kind of work.</param>
internal sealed record DraftStage(StageKey Key, BenchStage Stage, Id Series, WorkKind Work);

/// <summary>The stages and links of a bench problem while they are collected.</summary>
internal sealed class BenchDraft
{
    private readonly List<DraftStage> stages = [];
    private readonly List<BenchLink> links = [];
    private readonly Dictionary<StageKey, int> indices = [];
    private readonly Dictionary<Id, (int First, int Last)> ofTask = [];

    public IReadOnlyList<DraftStage> Stages => stages;

    public IReadOnlyList<BenchLink> Links => links;

    public int Add(DraftStage stage)
    {
        indices.Add(stage.Key, stages.Count);
        if (stage.Key.IsTask)
        {
            var first = ofTask.TryGetValue(stage.Key.Task, out var ends) ? ends.First : stages.Count;
            ofTask[stage.Key.Task] = (first, stages.Count);
        }

        stages.Add(stage);
        return stages.Count - 1;
    }

    public void Add(BenchLink link) => links.Add(link);

    /// <summary>The index of a stretch of work that is left to do, or null.</summary>
    public int? Find(StageKey key) => indices.TryGetValue(key, out var index) ? index : null;

    /// <summary>The index of the first and the last stage that is left of a task, or null; a shot is no stage of its task.</summary>
    public (int First, int Last)? EndsOf(Id task) => ofTask.TryGetValue(task, out var ends) ? ends : null;

    /// <summary>Whether links lead from a stage to another one, or the two are the same.</summary>
    public bool Leads(int from, int to)
    {
        var next = links.ToLookup(link => link.From, link => link.To);
        var (seen, open) = (new HashSet<int> { from }, new Stack<int>([from]));
        while (open.TryPop(out var stage))
        {
            if (stage == to)
            {
                return true;
            }

            foreach (var follower in next[stage].Where(seen.Add))
            {
                open.Push(follower);
            }
        }

        return false;
    }

    public void Replace(int index, Func<BenchStage, BenchStage> change) =>
        stages[index] = stages[index] with { Stage = change(stages[index].Stage) };
}
