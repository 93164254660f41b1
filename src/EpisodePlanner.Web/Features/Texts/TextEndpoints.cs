using EpisodePlanner.Planning;
using EpisodePlanner.Web.Features.Plans;
using EpisodePlanner.Web.Serving;
using EpisodePlanner.Web.Serving.Answers;
using EpisodePlanner.Web.Serving.ConditionalRequests;
using EpisodePlanner.Web.Serving.Requests;
using EpisodePlanner.Writing;
using Microsoft.AspNetCore.Http.HttpResults;

namespace EpisodePlanner.Web.Features.Texts;

/// <summary>The outline of an episode and the letter to supporters, written from the plan as it is now.</summary>
internal static class TextEndpoints
{
    private const string Forms = "As Markdown, or as HTML without a page around it that runs and loads nothing, by Accept.";

    /// <summary>Maps them beneath a workshop.</summary>
    public static void MapTexts(this RouteGroupBuilder workshop)
    {
        var group = workshop.MapGroup("").WithTags("Texts");
        group.MapRead("/episodes/{id}/outline", ReadOutline).Named("getOutline", "The notes for an episode to come.", Forms)
            .Refusing(ProblemTypes.NotAcceptable);
        group.MapRead("/letter", ReadLetter).Named("getLetter", "The update to supporters.", Forms)
            .Refusing(ProblemTypes.NotAcceptable);
    }

    private static Task<Results<WrittenText, NotModified, Problem>> ReadOutline(
        FoundWorkshop workshop, ThingId id, ReadConditions conditions, HttpRequest request, PlanDesk desk, CancellationToken stop) =>
        Write(workshop, conditions, request, desk, plan => id.Value is { } known ? Outline.Write(plan, known) : null, id.Text, stop);

    private static Task<Results<WrittenText, NotModified, Problem>> ReadLetter(
        FoundWorkshop workshop, ReadConditions conditions, HttpRequest request, PlanDesk desk, CancellationToken stop) =>
        Write(workshop, conditions, request, desk, Letter.Write, "", stop);

    private static async Task<Results<WrittenText, NotModified, Problem>> Write(
        FoundWorkshop workshop,
        ReadConditions conditions,
        HttpRequest request,
        PlanDesk desk,
        Func<Plan, WriteResult?> write,
        string episode,
        CancellationToken stop)
    {
        if (TextForms.Choose(request.GetTypedHeaders().Accept) is not { } form)
        {
            return Problems.Of(
                ProblemTypes.NotAcceptable, $"The text can be had as {TextForms.Markdown} and as {TextForms.Html}; ask for one of them in Accept.");
        }

        var made = await desk.Current(workshop.Now, PlanKey.UsualSchedules, stop);
        if (write(made.Plan) is not Writing.Written written)
        {
            return Refusals.NoThing("episode to come", episode);
        }

        var tag = made.Key.TagWith(form == TextForms.Html ? ".html" : ".md");
        return conditions.Judge(tag) switch
        {
            Verdict.NotModified => new NotModified(tag),
            Verdict.Failed => Refusals.Stale(conditions.IfMatch, tag),
            _ => new WrittenText(written.Markdown, form, tag),
        };
    }
}
