using EpisodePlanner.Planning;
using NodaTime;

namespace EpisodePlanner.Web.Features.Plans;

/// <summary>A plan that was made, with what follows from it and its document, which are made when they are first asked for.</summary>
internal sealed class MadePlan
{
    private readonly SharedWork<PlanAdvice> advice;
    private readonly SharedWork<ReadOnlyMemory<byte>> document;

    /// <summary>A plan.</summary>
    /// <param name="key">What it depends on.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="advise">Makes what follows from it.</param>
    public MadePlan(PlanKey key, Plan plan, Func<Plan, CancellationToken, Task<PlanAdvice>> advise)
    {
        (Key, Plan, Until) = (key, plan, PlanValidity.Until(plan));
        advice = new SharedWork<PlanAdvice>(stop => advise(plan, stop));
        document = new SharedWork<ReadOnlyMemory<byte>>(async stop => PlanJson.Write(await advice.Get(stop)));
    }

    /// <summary>What it depends on.</summary>
    public PlanKey Key { get; }

    /// <summary>The plan.</summary>
    public Plan Plan { get; }

    /// <summary>From when on a plan made anew may differ though nothing was changed.</summary>
    public Instant Until { get; }

    /// <summary>The plan and what follows from it.</summary>
    public Task<PlanAdvice> Advice(CancellationToken stop) => advice.Get(stop);

    /// <summary>The plan with all its parts as JSON.</summary>
    public Task<ReadOnlyMemory<byte>> Document(CancellationToken stop) => document.Get(stop);
}
