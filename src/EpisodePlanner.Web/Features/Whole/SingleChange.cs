using EpisodePlanner.Data;
using EpisodePlanner.Planning;
using EpisodePlanner.Planning.Files;
using EpisodePlanner.Web.Serving;
using EpisodePlanner.Web.Serving.Answers;
using EpisodePlanner.Web.Serving.ConditionalRequests;
using EpisodePlanner.Web.Serving.Requests;
using Microsoft.AspNetCore.Http.HttpResults;

namespace EpisodePlanner.Web.Features.Whole;

/// <summary>A guarded change of something that a workshop has one of.</summary>
/// <param name="workshop">The workshop.</param>
/// <param name="conditions">The preconditions of the request.</param>
/// <param name="what">What is changed.</param>
/// <param name="store">Where the workshop is kept.</param>
internal sealed class SingleChange(FoundWorkshop workshop, Conditions conditions, Aggregate what, WorkshopStore store)
{
    /// <summary>Replaces it.</summary>
    public async Task<Results<Answer<T>, Problem>> Put<T>(Change change, T to, CancellationToken stop)
        where T : class
    {
        if (Guards.Judge(conditions, workshop.Now, what, out var expects) is { } refusal)
        {
            return refusal;
        }

        var outcome = await store.Make(workshop.Id, new Edit(change, workshop.Who) { Expects = expects }, stop);
        return outcome switch
        {
            Made made => new Answer<T>(WorkshopFile.Write(to), EntityTags.Of(made.Change.Line.Version)),
            Unchanged same => new Answer<T>(WorkshopFile.Write(to), Guards.TagOf(same.Now, what)),
            _ => Outcomes.Refuse(outcome, workshop.Id, conditions.IfMatch, what),
        };
    }

    /// <summary>Makes a change after which there is nothing to show.</summary>
    /// <returns>Why not, or null.</returns>
    public async Task<Problem?> Make(Change change, CancellationToken stop)
    {
        if (Guards.Judge(conditions, workshop.Now, what, out var expects) is { } refusal)
        {
            return refusal;
        }

        var outcome = await store.Make(workshop.Id, new Edit(change, workshop.Who) { Expects = expects }, stop);
        return outcome is Made or Unchanged ? null : Outcomes.Refuse(outcome, workshop.Id, conditions.IfMatch, what);
    }
}
