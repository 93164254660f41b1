using EpisodePlanner.Planning;
using NodaTime;

namespace EpisodePlanner.Web.Features.Plans;

/// <summary>A plan that was made, with its document, which is made when it is first asked for.</summary>
internal sealed class MadePlan
{
    private readonly SharedWork<ReadOnlyMemory<byte>> document;

    /// <summary>A plan.</summary>
    /// <param name="key">What it depends on.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="writeDocument">Makes its document.</param>
    public MadePlan(PlanKey key, Plan plan, Func<Plan, CancellationToken, Task<ReadOnlyMemory<byte>>> writeDocument)
    {
        (Key, Plan, Until) = (key, plan, PlanValidity.Until(plan));
        document = new SharedWork<ReadOnlyMemory<byte>>(stop => writeDocument(plan, stop));
    }

    /// <summary>What it depends on.</summary>
    public PlanKey Key { get; }

    /// <summary>The plan.</summary>
    public Plan Plan { get; }

    /// <summary>From when on a plan made anew may differ though nothing was changed.</summary>
    public Instant Until { get; }

    /// <summary>The plan with all its parts as JSON.</summary>
    public Task<ReadOnlyMemory<byte>> Document(CancellationToken stop) => document.Get(stop);
}
