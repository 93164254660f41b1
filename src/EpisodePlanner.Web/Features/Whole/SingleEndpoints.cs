using EpisodePlanner.Data;
using EpisodePlanner.Planning;
using EpisodePlanner.Planning.Files;
using EpisodePlanner.Web.Serving;
using EpisodePlanner.Web.Serving.Answers;
using EpisodePlanner.Web.Serving.Requests;
using Microsoft.AspNetCore.Http.HttpResults;

namespace EpisodePlanner.Web.Features.Whole;

/// <summary>What a workshop has one of: its settings, and the plan the maker accepted.</summary>
internal static class SingleEndpoints
{
    /// <summary>Maps them beneath a workshop.</summary>
    public static void MapSingles(this RouteGroupBuilder workshop)
    {
        var settings = workshop.MapGroup("/settings").WithTags("Settings");
        settings.MapRead("", ReadSettings).Named(
            "getSettings", "What holds for the whole workshop.", "Whatever is absent is assumed; the plan tells what.");
        settings.MapPut("", PutSettings).Named("putSettings", "Replaces the settings, all at once.").Refusing(ProblemTypes.BrokenRules);

        var accepted = workshop.MapGroup("/accepted").WithTags("Plan");
        accepted.MapRead("", ReadAccepted).Named("getAccepted", "The plan the maker accepted.");
        accepted.MapPut("", PutAccepted).Named(
            "putAccepted", "Accepts an order of work and next starts.", "Where none is accepted yet, send If-None-Match: *.")
            .Refusing(ProblemTypes.BrokenRules);
        accepted.MapDelete("", DeleteAccepted).Named("deleteAccepted", "Lets go of the accepted plan.");
    }

    private static Results<Answer<Settings>, NotModified, Problem> ReadSettings(FoundWorkshop workshop, ReadConditions conditions) =>
        Reply.To<Settings>(
            conditions,
            Guards.TagOf(workshop.Now, Aggregate.Settings)!,
            () => WorkshopFile.Write(workshop.Now.Workshop.Settings));

    private static Task<Results<Answer<Settings>, Problem>> PutSettings(
        FoundWorkshop workshop, WriteConditions conditions, Body<Settings> body, WorkshopStore store, CancellationToken stop) =>
        new SingleChange(workshop, conditions.Value, Aggregate.Settings, store)
            .Put(new SettingsChange(body.Value), body.Value, stop);

    private static Results<Answer<AcceptedPlan>, NotModified, Problem> ReadAccepted(FoundWorkshop workshop, ReadConditions conditions) =>
        workshop.Now.Workshop.Accepted is { } accepted
            ? Reply.To<AcceptedPlan>(
                conditions, Guards.TagOf(workshop.Now, Aggregate.Accepted)!, () => WorkshopFile.Write(accepted))
            : Refusals.NothingAccepted();

    private static Task<Results<Answer<AcceptedPlan>, Problem>> PutAccepted(
        FoundWorkshop workshop, WriteConditions conditions, Body<AcceptedPlan> body, WorkshopStore store, CancellationToken stop) =>
        new SingleChange(workshop, conditions.Value, Aggregate.Accepted, store)
            .Put(new AcceptedPlanChange(body.Value), body.Value, stop);

    private static async Task<Results<Removed, Problem>> DeleteAccepted(
        FoundWorkshop workshop, WriteConditions conditions, WorkshopStore store, CancellationToken stop) =>
        workshop.Now.Workshop.Accepted is null
            ? Refusals.NothingAccepted()
            : await new SingleChange(workshop, conditions.Value, Aggregate.Accepted, store).Make(new AcceptedPlanChange(null), stop) is { } refusal
                ? refusal
                : new Removed();
}
