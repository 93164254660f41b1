using EpisodePlanner.Data;
using EpisodePlanner.Planning;
using EpisodePlanner.Web.Features.Plans;
using EpisodePlanner.Web.Pages;
using EpisodePlanner.Web.Pictures;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;

namespace EpisodePlanner.Web.Features.Story;

/// <summary>The stories of all series, with other ways to cut them.</summary>
internal static class StoryEndpoints
{
    /// <summary>Maps them beneath a workshop.</summary>
    public static void MapStory(this RouteGroupBuilder desk)
    {
        desk.MapGet("/story", Show);
        desk.MapGet("/story/cuts", ShowTogether);
        desk.MapGet("/story/cuts/{series}", ShowSeries);
        desk.MapPost("/story/take", Take);
        desk.MapPost("/story/pin", Pin);
        desk.MapGet("/story/{series}/picture.{ending}", Draw);
    }

    private static async Task<RazorComponentResult<StoryPage>> Show(FoundDesk found, Desk desk, CancellationToken stop) =>
        Shown.As<StoryPage>((nameof(StoryPage.View), await desk.View(found.Now, found.Done, stop)));

    private static async Task<IResult> ShowTogether(
        FoundDesk found,
        [FromQuery(Name = FoundDesk.NotNotedQuery)] string? unnoted,
        Desk desk,
        PlanDesk plans,
        CancellationToken stop)
    {
        var view = await desk.View(found.Now, found.Done, stop);
        var made = await plans.Current(found.Now, PlanKey.UsualSchedules, stop);
        return Shown.As<TogetherPage>(
            (nameof(TogetherPage.View), view with { IsUnnoted = unnoted is not null }),
            (nameof(TogetherPage.Answer), await made.Story(stop)));
    }

    private static async Task<IResult> ShowSeries(
        FoundDesk found,
        string series,
        [FromQuery(Name = FoundDesk.NotNotedQuery)] string? unnoted,
        Desk desk,
        PlanDesk plans,
        CancellationToken stop)
    {
        var view = await desk.View(found.Now, found.Done, stop);
        var made = await plans.Current(found.Now, PlanKey.UsualSchedules, stop);
        var story = Id.IsValid(series) ? await made.Story(new Id(series), stop) : null;
        return story is null
            ? Results.LocalRedirect(found.Paths.Story)
            : Shown.As<SeriesStoryPage>(
                (nameof(SeriesStoryPage.View), view with { IsUnnoted = unnoted is not null }),
                (nameof(SeriesStoryPage.Story), story));
    }

    /// <summary>Makes the change of a proposal, as it was shown: one that was shown for another version is looked at again first.</summary>
    private static async Task<IResult> Take(
        FoundDesk found, [FromForm] TakeForm form, PlanDesk plans, WorkshopStore store, CancellationToken stop)
    {
        var made = await plans.Current(found.Now, PlanKey.UsualSchedules, stop);
        var proposal = form.Base == found.Now.Version ? await form.Find(made, stop) : null;
        return await Make(found, form.Back(found.Paths), form.Base, proposal?.Change, store, stop);
    }

    private static async Task<IResult> Pin(
        FoundDesk found, [FromForm] PinForm form, PlanDesk plans, WorkshopStore store, CancellationToken stop)
    {
        var made = await plans.Current(found.Now, PlanKey.UsualSchedules, stop);
        var episode = made.Plan.Episodes.FirstOrDefault(episode => $"{episode.Id}" == form.Episode);
        var change = episode is null ? null : CutPins.Of(found.Now.Workshop, episode, form.Pinned);
        return await Make(found, found.Paths.Cuts(episode?.Series), form.Base, change, store, stop);
    }

    private static async Task<IResult> Make(
        FoundDesk found, string back, long version, Change? change, WorkshopStore store, CancellationToken stop)
    {
        var outcome = change is null
            ? null
            : await store.Make(
                found.Now.Id, new Edit(change, found.Who) { Expects = new Expectation.UntouchedSince(version) }, stop);
        return Results.LocalRedirect(
            outcome is Made or Unchanged ? Desk.After(back, outcome) : $"{back}?{FoundDesk.NotNotedQuery}=yes");
    }

    private static async Task<IResult> Draw(
        FoundDesk found, string series, string ending, string? theme, Desk desk, CancellationToken stop)
    {
        var plan = (await desk.View(found.Now, null, stop)).Plan;
        return Id.IsValid(series) && plan.Request.Workshop.Series.Find(new Id(series)) is { } known
            ? PictureFile.Of(StoryPicture.Draw(plan, known, "story"), ending, theme, $"story-{series}")
            : Results.NotFound();
    }
}
