using EpisodePlanner.Planning;
using EpisodePlanner.Web.Features.Plans;
using EpisodePlanner.Web.Telling;

namespace EpisodePlanner.Web.Features.Proofs;

/// <summary>
/// How much better than the plan any other could be that does the same work, publishes the same episodes and ends at most a
/// week later, for programs. Moments are local ISO date-times with their offset.
/// </summary>
public sealed record PlanProofDocument : IComputedDocument
{
    /// <summary>The format of this document.</summary>
    public int Format { get; init; } = 1;

    /// <summary>The moment of planning.</summary>
    public required string PlannedAt { get; init; }

    /// <summary>Whether no plan is better.</summary>
    public required bool Best { get; init; }

    /// <summary>
    /// What plans are judged by, the weightiest first, up to the first part in which a better plan is not ruled out; empty
    /// where the plan leaves work or an episode without a date.
    /// </summary>
    public required IReadOnlyList<PartProofEntry> Parts { get; init; }

    /// <summary>The whole in a sentence.</summary>
    public required string Says { get; init; }

    /// <summary>The document of a proof; null where there was nothing to compare.</summary>
    internal static PlanProofDocument Of(Plan plan, PlanProof? proof)
    {
        var words = new PlanProofWords(plan);
        return new PlanProofDocument
        {
            PlannedAt = new DocumentValues(plan.Zone).Moment(plan.Request.PlannedAt),
            Best = proof?.IsBest ?? false,
            Parts = [.. (proof?.Parts ?? []).Select(part => new PartProofEntry(
                DocumentValues.Word(part.Part), words.Part(part), part.Reached, part.Bound, part.IsReached))],
            Says = proof is null ? PlanProofWords.Incomparable : PlanProofWords.Verdict(proof),
        };
    }
}

/// <summary>How little a part of a plan can weigh, among plans that are as good in all parts before.</summary>
/// <param name="Part">
/// late: minutes by which told dates, dates that work is needed by and pinned slots are missed. silence: days beyond promises,
/// squared and added. moves: accepted starts of the next seven days that have moved. end: of the work, minutes from planning.
/// </param>
/// <param name="Says">In words.</param>
/// <param name="Reached">What it weighs in this plan.</param>
/// <param name="Bound">No plan weighs less.</param>
/// <param name="IsReached">Whether these two are one: nothing can be won here.</param>
public sealed record PartProofEntry(string Part, string Says, long Reached, long Bound, bool IsReached);
