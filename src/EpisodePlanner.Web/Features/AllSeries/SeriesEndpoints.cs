using EpisodePlanner.Data;
using EpisodePlanner.Planning;
using EpisodePlanner.Planning.Files;
using EpisodePlanner.Web.Pages;
using Microsoft.AspNetCore.Mvc;

namespace EpisodePlanner.Web.Features.AllSeries;

/// <summary>The series with their work, and work written as on paper.</summary>
internal static class SeriesEndpoints
{
    private const int LongestName = 200;

    /// <summary>Maps them beneath a workshop.</summary>
    public static void MapSeries(this RouteGroupBuilder desk)
    {
        desk.MapGet("/series", ShowAll);
        desk.MapPost("/series", Begin);
        desk.MapGet("/series/{id}", ShowOne);
        desk.MapPost("/series/{id}", Write);
        desk.MapRest();
    }

    private static async Task<IResult> ShowAll(FoundDesk found, Desk desk, CancellationToken stop) =>
        Shown.As<SeriesListPage>((nameof(SeriesListPage.View), await desk.View(found.Now, found.Done, stop)));

    private static async Task<IResult> ShowOne(
        FoundDesk found, string id, [FromQuery(Name = FoundDesk.NotNotedQuery)] string? unnoted, Desk desk, CancellationToken stop) =>
        Find(found, id) is { } series
            ? await One(found, series, null, unnoted is not null, desk, stop)
            : Results.LocalRedirect(found.Paths.Series);

    /// <summary>Begins a series under the slug of its name, so that a form sent twice begins one.</summary>
    private static async Task<IResult> Begin(
        FoundDesk found, [FromForm] WorkForm form, Desk desk, WorkshopStore store, CancellationToken stop)
    {
        var name = (form.Name ?? "").Trim();
        var problem = name.Length is 0 or > LongestName ? $"Give the build a name of 1 to {LongestName} characters."
            : found.Now.Workshop.Series.Any(series => series.Name == name) ? "There is a series of this name; write its work on its own page."
            : null;
        var series = new Series { Id = ThingNames.IdFor(name, ThingKinds.Series, found.Now.Workshop), Name = problem is null ? name : "?" };
        var written = WrittenWork.Understand(found.Now.Workshop, series, form.Given);
        if (problem is null && written.Problems.Count == 0)
        {
            var outcome = await store.Make(found.Now.Id, Edit(found, written.Change!, ThingKinds.Series.Of(series.Id)), stop);
            if (outcome is not Broken broken)
            {
                return Results.LocalRedirect(Desk.After(found.Paths.OfSeries(series.Id), outcome));
            }

            problem = broken.Reasons[0].Says;
        }

        return Shown.As<SeriesListPage>(
            StatusCodes.Status422UnprocessableEntity,
            (nameof(SeriesListPage.View), await desk.View(found.Now, null, stop)),
            (nameof(SeriesListPage.Typed), new TypedWork(form.Name ?? "", form.Lines ?? "", problem, written.Problems)));
    }

    private static async Task<IResult> Write(
        FoundDesk found, string id, [FromForm] WorkForm form, Desk desk, WorkshopStore store, CancellationToken stop)
    {
        if (Find(found, id) is not { } series)
        {
            return Results.LocalRedirect(found.Paths.Series);
        }

        var written = WrittenWork.Understand(found.Now.Workshop, series, form.Given);
        var problems = written.Problems;
        if (written.Change is { } change)
        {
            var outcome = await store.Make(found.Now.Id, Edit(found, change, null), stop);
            if (outcome is not Broken broken)
            {
                return Results.LocalRedirect(Desk.After(found.Paths.OfSeries(series.Id), outcome));
            }

            problems = broken.Reasons.Select(reason => new WorkLineProblem(0, "", reason.Says)).ToValueList();
        }

        return await One(found, series, new TypedWork("", form.Lines ?? "", null, OrNothing(problems)), false, desk, stop);
    }

    /// <summary>Where nothing at all was typed, that is said.</summary>
    private static ValueList<WorkLineProblem> OrNothing(ValueList<WorkLineProblem> problems) =>
        problems.Count > 0 ? problems : [new WorkLineProblem(0, "", "Write at least one line, such as \u201cweld frame, 12 h\u201d.")];

    private static Edit Edit(FoundDesk found, Change change, Aggregate? fresh) => new(change, found.Who)
    {
        Expects = fresh is { } what ? new Expectation.Absent(what) : new Expectation.UntouchedSince(found.Now.Version),
    };

    private static async Task<IResult> One(
        FoundDesk found, Series series, TypedWork? typed, bool isUnnoted, Desk desk, CancellationToken stop) =>
        Shown.As<SeriesPage>(
            typed is null ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity,
            (nameof(SeriesPage.View), await desk.View(found.Now, found.Done, stop) with { IsUnnoted = isUnnoted }),
            (nameof(SeriesPage.Series), series),
            (nameof(SeriesPage.Typed), typed));

    private static Series? Find(FoundDesk found, string id) => Id.IsValid(id) ? found.Now.Workshop.Series.Find(new Id(id)) : null;
}

/// <summary>Work written as on paper, as it is sent.</summary>
internal sealed class WorkForm
{
    /// <summary>The name of a new series.</summary>
    public string? Name { get; init; }

    /// <summary>The lines.</summary>
    public string? Lines { get; init; }

    /// <summary>The lines one by one.</summary>
    public string[] Given => (Lines ?? "").ReplaceLineEndings("\n").Split('\n');
}
