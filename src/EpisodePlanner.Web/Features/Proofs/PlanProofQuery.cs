using System.ComponentModel.DataAnnotations;

namespace EpisodePlanner.Web.Features.Proofs;

/// <summary>How long a proof about the whole plan is looked for.</summary>
internal sealed record PlanProofQuery
{
    /// <summary>About so many seconds of work for each of four parts, and at most twice as many on the clock; 2 where absent.</summary>
    [Range(1, 3)]
    public int Seconds { get; init; } = 2;
}
