using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Proving.Bench;

/// <summary>Which stages a schedule must hold so that some targets are done, and which of them must be done first.</summary>
internal sealed class NeededStages
{
    private readonly BenchProblem problem;
    private readonly ILookup<int, BenchLink> into;

    public NeededStages(BenchProblem problem, WorkHours hours, IReadOnlyCollection<int> targets)
    {
        this.problem = problem;
        into = problem.Links.Where(link => !problem.Stages[link.To].Begun).ToLookup(link => link.To);
        var all = Closure(targets.Concat(HeldFromTheStart(hours)), Waited);
        Stages = [.. all.Order()];
        Links = [.. all.Order().SelectMany(Into)];
        Order = FindOrder();
    }

    /// <summary>The stages, ascending.</summary>
    public IReadOnlyList<int> Stages { get; }

    /// <summary>The links between them that count.</summary>
    public IReadOnlyList<BenchLink> Links { get; }

    /// <summary>The stages, each after those it waits for.</summary>
    public IReadOnlyList<int> Order { get; }

    /// <summary>The links into a stage that count.</summary>
    public IEnumerable<BenchLink> Into(int stage) => into[stage];

    /// <summary>A stage and all that is finished, in every schedule, when it is.</summary>
    public IReadOnlySet<int> FinishedWith(IEnumerable<int> stages) => Closure(stages, FinishedFirst);

    /// <summary>All that is finished, in every schedule, when a stage starts.</summary>
    public IReadOnlySet<int> FinishedBefore(int stage) => Closure(
        Into(stage).Where(link => link.Kind == LinkKind.After && link.Lag >= 0).Select(link => link.From), FinishedFirst);

    private IEnumerable<int> Waited(int stage) => Into(stage).Select(link => link.From);

    private IEnumerable<int> FinishedFirst(int stage) => Into(stage)
        .Where(link => link.Kind is LinkKind.After or LinkKind.TogetherFinish && link.Lag >= 0)
        .Select(link => link.From);

    /// <summary>
    /// Runs and waits that are going on hold their stations, needed or not. Only those that can surely be placed: which of
    /// two would be left out is not known.
    /// </summary>
    private IEnumerable<int> HeldFromTheStart(WorkHours hours)
    {
        var begun = problem.Stages.Select((stage, i) => (Stage: stage, Index: i)).Where(x => x.Stage.Begun).ToList();
        return begun
            .Where(x => x.Stage is { Kind: not StageKind.Attended, Modes.Count: 1, GluedTo: -1 })
            .Where(x => EarliestDates.Alone(hours, x.Stage, 0).Finish <= problem.Horizon)
            .Where(x => begun.All(y => y.Index == x.Index || !Stations(x.Stage).Intersect(Stations(y.Stage)).Any()))
            .Select(x => x.Index);
    }

    private static IEnumerable<int> Stations(BenchStage stage) =>
        stage.Modes.SelectMany(mode => mode.Machine >= 0 ? mode.Stations.Append(mode.Machine) : mode.Stations);

    private static HashSet<int> Closure(IEnumerable<int> from, Func<int, IEnumerable<int>> next)
    {
        var (found, open) = (new HashSet<int>(), new Stack<int>(from));
        while (open.TryPop(out var stage))
        {
            if (found.Add(stage))
            {
                foreach (var other in next(stage))
                {
                    open.Push(other);
                }
            }
        }

        return found;
    }

    private List<int> FindOrder()
    {
        var (order, done) = (new List<int>(), new HashSet<int>());
        foreach (var stage in Stages)
        {
            Visit(stage, order, done);
        }

        return order;
    }

    private void Visit(int stage, List<int> order, HashSet<int> done)
    {
        if (done.Add(stage))
        {
            foreach (var other in Waited(stage))
            {
                Visit(other, order, done);
            }

            order.Add(stage);
        }
    }
}
