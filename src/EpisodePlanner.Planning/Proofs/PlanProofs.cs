using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Planning;

/// <summary>Asks what no plan can do, and says it in the words of the workshop.</summary>
public static class PlanProofs
{
    /// <summary>How soon any plan could publish an episode; null where the plan has no such episode.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="episode">The episode's id.</param>
    /// <param name="prover">Who proves it.</param>
    /// <param name="limits">How long to look.</param>
    /// <param name="progress">Told the share of the limits used, 0 to 1.</param>
    /// <param name="stop">Stops soon; what is said then is right, and may be less.</param>
    public static EpisodeProof? OfEpisode(
        Plan plan, Id episode, IPlanProver prover, ProofLimits limits, IProgress<double>? progress = null, CancellationToken stop = default)
    {
        if (plan.Episodes.FirstOrDefault(planned => planned.Id == episode) is not { } found)
        {
            return null;
        }

        var (question, draft) = PlanQuestions.Of(plan);
        var index = Enumerable.Range(0, question.Episodes.Count).First(i => question.Episodes[i].Id == episode);
        var bound = prover.EarliestPublish(question, index, limits, progress, stop);
        return new EpisodeProof
        {
            Episode = found,
            Earliest = bound.Minute is { } minute ? draft.Axis.MomentOf(minute) : null,
            Date = bound.Minute is { } at ? draft.Axis.DateOf(at) : null,
            Why = Why(bound.Binding, plan, draft),
        };
    }

    /// <summary>
    /// How much better than this one any plan could be; null where it leaves work or an episode without a date, so that there
    /// is nothing to compare.
    /// </summary>
    /// <param name="plan">The plan.</param>
    /// <param name="prover">Who proves it.</param>
    /// <param name="limits">How long to look at each part.</param>
    /// <param name="progress">Told the share of the parts looked at, 0 to 1.</param>
    /// <param name="stop">Stops soon; what is said then is right, and may be less.</param>
    public static PlanProof? OfPlan(
        Plan plan, IPlanProver prover, ProofLimits limits, IProgress<double>? progress = null, CancellationToken stop = default)
    {
        var (question, _) = PlanQuestions.Of(plan);
        if (question.Aims is null)
        {
            return null;
        }

        var bound = prover.Weigh(question, limits, progress, stop);
        var reached = plan.Weights.InOrder;
        return new PlanProof { Parts = bound.Parts.Select((least, part) => new PartProof((WeightPart)part, reached[part], least)).ToValueList() };
    }

    private static ProofReason Why(PublishingBinding binding, Plan plan, PlanDraft draft) => binding switch
    {
        PublishingBinding.Chain chain => new ProofReason.Chain(
            chain.Stages.Select(stage => plan.Stages.First(planned => planned.Index == stage)).ToValueList()),
        PublishingBinding.Load load => new ProofReason.Load(
            load.Stations.Select(draft.Stations.IdOf).ToValueList(),
            draft.Axis.MomentOf(load.From),
            draft.Axis.MomentOf(load.Until),
            (int)Math.Min(int.MaxValue, load.Needed),
            (int)Math.Min(int.MaxValue, load.Open)),
        PublishingBinding.Together together => new ProofReason.Together(together.Stations.Select(draft.Stations.IdOf).ToValueList()),
        _ => new ProofReason.Slots(),
    };
}
