using EpisodePlanner.Data;
using EpisodePlanner.Planning;
using EpisodePlanner.Planning.Files;
using EpisodePlanner.Web.Features.Changing;
using EpisodePlanner.Web.Features.Workshops;
using EpisodePlanner.Web.Serving;
using EpisodePlanner.Web.Serving.Answers;
using EpisodePlanner.Web.Serving.ConditionalRequests;
using EpisodePlanner.Web.Serving.Idempotency;
using EpisodePlanner.Web.Serving.Requests;
using Microsoft.AspNetCore.Http.HttpResults;

namespace EpisodePlanner.Web.Features.Transfer;

/// <summary>Whole workshops come in as a file and go out as one.</summary>
internal static class TransferEndpoints
{
    private const string Tag = "Import and export";

    /// <summary>Maps the import of new workshops.</summary>
    public static void MapImports(this RouteGroupBuilder api)
    {
        var group = api.MapGroup("/imports").WithTags(Tag);
        group.MapPost("", Import).Named("importWorkshop", "Makes a new workshop of a workshop file.").TakesWorkshops();
        group.MapPost("/preview", Preview).Named(
            "previewImport", "Says what a workshop file would bring, and what its plan would say.", "Nothing is changed.").TakesWorkshops();
    }

    /// <summary>Maps the import into a workshop and its export.</summary>
    public static void MapTransfer(this RouteGroupBuilder workshop)
    {
        var group = workshop.MapGroup("").WithTags(Tag);
        group.MapPost("/import", Replace).Named(
            "importIntoWorkshop",
            "Replaces all that a workshop holds by a workshop file, as one change that can be undone.",
            "Told dates stay. Look at the preview first, and send the version that it names as If-Match.")
            .TakesWorkshops()
            .Refusing(ProblemTypes.BrokenRules);
        group.MapPost("/import/preview", PreviewReplacement).Named(
            "previewImportIntoWorkshop",
            "Says what would be added, changed and removed, and how the next upload would move.",
            "Nothing is changed.")
            .TakesWorkshops()
            .Refusing(ProblemTypes.BrokenRules);
        group.MapRead("/export", Export).Named(
            "exportWorkshop",
            "The whole workshop as a workshop file in canonical form.",
            "A file that came in in canonical form goes out byte-identical.");
    }

    private static async Task<Results<Creation<WorkshopHead>, Problem>> Import(
        FileBody file, IdempotencyKey key, WorkshopStore store, CancellationToken stop) =>
        WorkshopEndpoints.Created(await store.Create(file.Workshop, Makers.Of(file.Workshop), key.For(file.Bytes), stop));

    private static async Task<Answer<ImportPreview>> Preview(FileBody file, Importing importing, CancellationToken stop) =>
        new(WorkshopFile.Write(await importing.Preview(file.Workshop, stop)));

    private static async Task<Results<Answer<ChangeMade>, Problem>> Replace(
        FoundWorkshop workshop,
        WriteConditions conditions,
        FileBody file,
        IdempotencyKey key,
        WorkshopStore store,
        CancellationToken stop)
    {
        var refusal = Guards.Judge(conditions.Value, workshop.Now, out var expects);
        if (refusal is not null && !key.IsGiven)
        {
            return refusal;
        }

        // What differs is found on the version that was read, so the change may only be made to that one.
        var edit = new Edit(Differences.Between(workshop.Now.Workshop, file.Workshop) ?? new Batch([]), workshop.Who)
        {
            Expects = refusal is null ? new Expectation.WorkshopAt([workshop.Now.Version]) : expects,
            Key = key.For(file.Bytes),
            Act = Act.Import,
        };
        return ChangeMade.Answer(await store.Make(workshop.Id, edit, stop), workshop.Id, conditions.Value.IfMatch);
    }

    private static async Task<Results<Answer<ImportPreview>, Problem>> PreviewReplacement(
        FoundWorkshop workshop, FileBody file, Importing importing, CancellationToken stop)
    {
        var (preview, reasons) = await importing.Preview(workshop.Now, file.Workshop, stop);
        return preview is null ? Problems.Broken(reasons) : new Answer<ImportPreview>(WorkshopFile.Write(preview));
    }

    private static Results<Answer<Workshop>, NotModified, Problem> Export(FoundWorkshop workshop, ReadConditions conditions) =>
        Reply.To<Workshop>(
            conditions, EntityTags.Of(workshop.Now.Version), () => WorkshopFile.Write(workshop.Now.Workshop));
}
