using EpisodePlanner.Planning;
using EpisodePlanner.Web.Features.Plans;
using EpisodePlanner.Web.Telling;

namespace EpisodePlanner.Web.Features.Proofs;

/// <summary>Makes documents of proofs.</summary>
internal static class ProofDocuments
{
    /// <summary>The document of a proof.</summary>
    public static ProofDocument Of(Plan plan, EpisodeProof proof)
    {
        var (values, words) = (new DocumentValues(plan.Zone), new ProofWords(plan));
        return new ProofDocument
        {
            Episode = $"{proof.Episode.Id}",
            Title = proof.Episode.Title,
            PlannedAt = values.Moment(plan.Request.PlannedAt),
            Earliest = values.Moment(proof.Earliest),
            EarliestDay = DocumentValues.Day(proof.Date),
            PlannedDay = DocumentValues.Day(proof.Episode.Date),
            Reached = proof.IsReached,
            OpenDays = proof.OpenDays,
            Says = words.Bound(proof),
            Why = Why(proof.Why, words.Why(proof.Why), values),
        };
    }

    private static ProofReasonEntry Why(ProofReason why, string says, DocumentValues values) => why switch
    {
        ProofReason.Chain chain => new("chain", says, [.. chain.Stages.Select(stage => DocumentValues.Key(stage.Key))], [], null, null, null, null),
        ProofReason.Load load => new(
            "load",
            says,
            [],
            [.. load.Stations.Select(station => $"{station}")],
            values.Moment(load.From),
            values.Moment(load.Until),
            load.NeededMinutes,
            load.OpenMinutes),
        ProofReason.Together together => new("together", says, [], [.. together.Stations.Select(station => $"{station}")], null, null, null, null),
        _ => new("slots", says, [], [], null, null, null, null),
    };
}
