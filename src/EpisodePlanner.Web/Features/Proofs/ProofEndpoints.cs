using EpisodePlanner.Web.Features.Plans;
using EpisodePlanner.Web.Serving;
using EpisodePlanner.Web.Serving.Answers;
using EpisodePlanner.Web.Serving.Requests;
using Microsoft.AspNetCore.Http.HttpResults;

namespace EpisodePlanner.Web.Features.Proofs;

/// <summary>What no plan of a workshop can do.</summary>
internal static class ProofEndpoints
{
    /// <summary>Maps it beneath a workshop.</summary>
    public static void MapProofs(this RouteGroupBuilder workshop)
    {
        var proof = workshop.MapGroup("/plan/proof").WithTags("Plan");
        proof.MapGet("", ReadEpisode).Named(
            "getPlanProof",
            "How soon any plan could publish an episode.",
            "The date before which no plan can publish it, with the same episodes and work, whether the plan reaches it, and what "
            + "makes earlier dates impossible. More seconds may prove a later date.")
            .Produces<ProofDocument>();
        proof.MapGet("/whole", ReadWhole).Named(
            "getWholePlanProof",
            "How much better any plan could be.",
            "How little any plan could weigh that does the same work, publishes the same episodes and ends at most a week later, "
            + "part by part, and whether this one is the best there is. More seconds may prove more.")
            .Produces<PlanProofDocument>();
    }

    private static async Task<Results<Answer<ProofDocument>, Problem>> ReadEpisode(
        FoundWorkshop workshop, Query<ProofQuery> query, PlanDesk plans, ProofDesk proofs, CancellationToken stop)
    {
        var made = await plans.Current(workshop.Now, PlanKey.UsualSchedules, stop);
        var proof = await proofs.OfEpisode(made.Plan, query.Value.Episode, query.Value.Seconds, stop);
        return proof is null
            ? Refusals.NoThing("episode to come", query.Value.Episode.ToString())
            : new Answer<ProofDocument>(DocumentJson.Write(ProofDocuments.Of(made.Plan, proof)));
    }

    private static async Task<Answer<PlanProofDocument>> ReadWhole(
        FoundWorkshop workshop, Query<PlanProofQuery> query, PlanDesk plans, ProofDesk proofs, CancellationToken stop)
    {
        var made = await plans.Current(workshop.Now, PlanKey.UsualSchedules, stop);
        var proof = await proofs.OfPlan(made.Plan, query.Value.Seconds, stop);
        return new Answer<PlanProofDocument>(DocumentJson.Write(PlanProofDocument.Of(made.Plan, proof)));
    }
}
