using System.ComponentModel.DataAnnotations;
using System.Globalization;
using EpisodePlanner.Planning;
using EpisodePlanner.Web.Features.Plans;
using EpisodePlanner.Web.Pages;
using EpisodePlanner.Web.Serving;
using EpisodePlanner.Web.Serving.Answers;
using EpisodePlanner.Web.Serving.ConditionalRequests;
using EpisodePlanner.Web.Serving.Requests;
using Microsoft.AspNetCore.Http.HttpResults;

namespace EpisodePlanner.Web.Features.Cadences;

/// <summary>What a cadence can be asked.</summary>
internal sealed record CadenceQuery
{
    /// <summary>Percent of the kept hours that may be loaded; 85 where absent.</summary>
    [Range(1, 100)]
    public int Loading { get; init; } = (int)(Cadence.UsualLoading * 100);

    /// <summary>The same as a share.</summary>
    public decimal Share => Loading / 100m;
}

/// <summary>What can be kept up: for programs, and as a page.</summary>
internal static class CadenceEndpoints
{
    /// <summary>Maps it beneath a workshop of the API.</summary>
    public static void MapCadence(this RouteGroupBuilder workshop) => workshop.MapGroup("/cadence").WithTags("Plan")
        .MapRead("", Read)
        .Named(
            "getCadence",
            "What can be kept up over all series, and which promise breaks first.",
            "From kept hours, what episodes cost and the slots: the highest rate of uploads, whether all promises can hold with "
            + "a rotation that keeps them, else which breaks first and the nearest that hold, and what resting a series would do.")
        .Produces<CadenceDocument>();

    /// <summary>Maps the page.</summary>
    public static void MapCadencePage(this RouteGroupBuilder desk) => desk.MapGet("/cadence", Show);

    private static async Task<Results<Answer<CadenceDocument>, NotModified, Problem>> Read(
        FoundWorkshop workshop, Query<CadenceQuery> query, ReadConditions conditions, PlanDesk desk, CancellationToken stop)
    {
        var made = await desk.Current(workshop.Now, PlanKey.UsualSchedules, stop);
        var tag = made.Key.TagWith(string.Create(CultureInfo.InvariantCulture, $".cadence{query.Value.Loading}"));
        return conditions.Judge(tag) == Verdict.Holds
            ? new Answer<CadenceDocument>(DocumentJson.Write(CadenceDocuments.Of(Cadence.Of(made.Plan, query.Value.Share))), tag)
            : Reply.To<CadenceDocument>(conditions, tag, () => default);
    }

    private static async Task<IResult> Show(FoundDesk found, int? loading, Desk desk, CancellationToken stop)
    {
        var view = await desk.View(found.Now, found.Done, stop);
        var share = Math.Clamp(loading ?? (int)(Cadence.UsualLoading * 100), 1, 100) / 100m;
        return Shown.As<CadencePage>((nameof(CadencePage.View), view), (nameof(CadencePage.Cadence), Cadence.Of(view.Plan, share)));
    }
}
