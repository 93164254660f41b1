using EpisodePlanner.Data;
using EpisodePlanner.Planning;
using EpisodePlanner.Web.Features.History;
using EpisodePlanner.Web.Features.Plans;

namespace EpisodePlanner.Web.Features.Supposes;

/// <summary>Plans drafts beside the plan.</summary>
/// <param name="supposes">Where drafts are.</param>
/// <param name="plans">Makes and keeps plans.</param>
internal sealed class SupposeDesk(SupposeStore supposes, PlanDesk plans)
{
    /// <summary>Every draft of a workshop beside its plan, the newest first.</summary>
    public async Task<ValueList<SupposedPlan>> All(Snapshot now, CancellationToken stop)
    {
        var made = await plans.Current(now, PlanKey.UsualSchedules, stop);
        var all = new List<SupposedPlan>();
        foreach (var draft in await supposes.List(now.Id, stop) ?? [])
        {
            if (await Of(made, now.Id, draft.Id, stop) is { } supposed)
            {
                all.Add(supposed);
            }
        }

        return all.ToValueList();
    }

    /// <summary>A draft beside a plan; null where it is not there any more.</summary>
    public async Task<SupposedPlan?> Of(MadePlan made, Id workshop, Id draft, CancellationToken stop)
    {
        if (await supposes.Replay(workshop, draft, stop) is not { } supposed)
        {
            return null;
        }

        var real = made.Plan.Request.Workshop;
        var reasons = (Changes.Apply(real, supposed.Suppose.Changes) as Refused)?.Reasons ?? [];
        return new SupposedPlan(
            supposed.Suppose,
            ChangeWords.Say(supposed.Suppose.Changes, real),
            reasons.Count == 0 ? await made.Suppose(supposed.Suppose, stop) : null,
            reasons,
            supposed.ChangedSince.Select(thing => OutcomeWords.Name(real, thing.What)).ToValueList());
    }
}
