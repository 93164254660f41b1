using EpisodePlanner.Scheduling;
using EpisodePlanner.Scheduling.Causes;

namespace EpisodePlanner.Planning;

/// <summary>Causes and chains of a schedule in words, found when they are asked for, from any thread.</summary>
internal sealed class Explanations(PlanDraft draft, BenchSchedule schedule, IReadOnlyList<int> acceptedOrder)
{
    private readonly Lock gate = new();
    private readonly Lazy<CauseFinder> causes = new(() => new CauseFinder(schedule, acceptedOrder));
    private readonly CauseWords words = new(draft, schedule);
    private readonly ChainLink?[] links = new ChainLink?[schedule.Problem.Stages.Count];

    /// <summary>Why a stage does not start earlier; null where it has no date.</summary>
    public PlannedCause? Cause(int stage)
    {
        lock (gate)
        {
            return schedule.IsPlaced(stage) ? Link(stage).Cause : null;
        }
    }

    /// <summary>The chain of causes that decides when a placed stage starts.</summary>
    public ValueList<ChainLink> Chain(int stage)
    {
        lock (gate)
        {
            return causes.Value.Chain(stage).Select(step => Link(step.Stage)).ToValueList();
        }
    }

    private ChainLink Link(int stage) => links[stage] ??= new ChainLink(
        draft.Bench.Stages[stage].Key,
        draft.Bench.Stages[stage].Stage.Name,
        draft.Axis.MomentOf(schedule.Start(stage)),
        draft.Axis.MomentOf(schedule.Finish(stage)),
        words.Of(stage, causes.Value.Explain(stage)));
}
