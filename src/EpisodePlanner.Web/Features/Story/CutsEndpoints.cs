using EpisodePlanner.Web.Features.Plans;
using EpisodePlanner.Web.Serving;
using EpisodePlanner.Web.Serving.Answers;
using EpisodePlanner.Web.Serving.ConditionalRequests;
using EpisodePlanner.Web.Serving.Requests;
using Microsoft.AspNetCore.Http.HttpResults;

namespace EpisodePlanner.Web.Features.Story;

/// <summary>Where the stories could be cut otherwise, for programs.</summary>
internal static class CutsEndpoints
{
    /// <summary>Maps it beneath a workshop of the API.</summary>
    public static void MapCuts(this RouteGroupBuilder workshop)
    {
        workshop.MapGroup("/cuts").WithTags("Plan")
            .MapRead("", ReadAll)
            .Named(
                "getCuts",
                "The cuts and slots of all series that together leave the least silence.",
                "Beside the plan as it is cut now: what changes, what it costs and what it wins, each found by planning again and "
                + "given as a change that can be made. The plan itself never cuts unasked.")
            .Produces<CutsDocument>();
        workshop.MapGroup("/series").WithTags("Plan")
            .MapRead("/{id}/cuts", ReadOne)
            .Named(
                "getSeriesCuts",
                "Every place where a series could be cut, and what that would do.",
                "For each milestone still to be told: the cut set, taken away or moved there, each planned; episodes that need no more of "
                + "the build; the last slot within the promise and the hours there are before it.")
            .Produces<SeriesCutsDocument>();
    }

    private static async Task<Results<Answer<CutsDocument>, NotModified, Problem>> ReadAll(
        FoundWorkshop workshop, ReadConditions conditions, PlanDesk desk, CancellationToken stop)
    {
        var made = await desk.Current(workshop.Now, PlanKey.UsualSchedules, stop);
        var tag = made.Key.TagWith(".cuts");
        return conditions.Judge(tag) == Verdict.Holds
            ? new Answer<CutsDocument>(DocumentJson.Write(new CutsDocuments(made.Plan).Of(await made.Story(stop), [])), tag)
            : Reply.To<CutsDocument>(conditions, tag, () => default);
    }

    private static async Task<Results<Answer<SeriesCutsDocument>, NotModified, Problem>> ReadOne(
        FoundWorkshop workshop, ThingId id, ReadConditions conditions, PlanDesk desk, CancellationToken stop)
    {
        var made = await desk.Current(workshop.Now, PlanKey.UsualSchedules, stop);
        if (id.Value is not { } series || made.Plan.Series.All(outlook => outlook.Series != series))
        {
            return Refusals.NoThing("series that goes on", id.Text);
        }

        var tag = made.Key.TagWith(".cuts");
        return conditions.Judge(tag) == Verdict.Holds
            ? new Answer<SeriesCutsDocument>(
                DocumentJson.Write(new CutsDocuments(made.Plan).Document((await made.Story(series, stop))!)), tag)
            : Reply.To<SeriesCutsDocument>(conditions, tag, () => default);
    }
}
