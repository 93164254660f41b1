using System.Security.Cryptography;
using System.Text;
using EpisodePlanner.Data;
using EpisodePlanner.Planning;
using EpisodePlanner.Planning.Files;
using EpisodePlanner.Web.Features.Transfer;
using EpisodePlanner.Web.Pages;
using EpisodePlanner.Web.Serving;
using EpisodePlanner.Web.Serving.Requests;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;

namespace EpisodePlanner.Web.Features.BringIn;

/// <summary>A workshop file is looked at, then taken in as a new workshop, whole or not at all.</summary>
internal static class BringInEndpoints
{
    /// <summary>Where a file is sent to, first to be looked at.</summary>
    public const string Path = "/bring-in";

    /// <summary>Where it is sent to be taken in.</summary>
    public const string TakePath = "/bring-in/take";

    private const int LongestKey = 64;

    /// <summary>Maps them.</summary>
    public static void MapBringIn(this IEndpointRouteBuilder routes)
    {
        routes.MapPost(Path, Look).TakesFiles();
        routes.MapPost(TakePath, Take).TakesFiles();
    }

    private static RouteHandlerBuilder TakesFiles(this RouteHandlerBuilder route) => route
        .TakesWorkshops()
        .WithFormOptions(valueLengthLimit: BodyLimits.Import, multipartBodyLengthLimit: BodyLimits.Import)
        .ExcludeFromDescription();

    private static async Task<IResult> Look(IFormFile? file, Importing importing, IdSource ids, CancellationToken stop)
    {
        var bytes = await Read(file, stop);
        return await Page(bytes, ids.Next().ToString(), importing, stop);
    }

    private static async Task<IResult> Take(
        [FromForm] string? text, [FromForm] string? key, WorkshopStore store, Importing importing, CancellationToken stop)
    {
        var bytes = Encoding.UTF8.GetBytes(text ?? "");
        if (WorkshopFile.Read(bytes).Thing is not { } workshop || key is not { Length: > 0 and <= LongestKey })
        {
            return await Page(bytes, key ?? "", importing, stop);
        }

        var once = new RequestKey(key, Convert.ToHexStringLower(SHA256.HashData(bytes)));
        return await store.Create(workshop, Makers.Of(workshop), once, stop) switch
        {
            Made made => Results.LocalRedirect(new Paths(made.Now.Id).Now),
            Broken broken => Refused(broken.Reasons),
            _ => Results.LocalRedirect("/"),
        };
    }

    private static async Task<IResult> Page(byte[] bytes, string key, Importing importing, CancellationToken stop)
    {
        var read = WorkshopFile.Read(bytes);
        return read.Thing is { } workshop
            ? Shown.As<BringInPage>((
                nameof(BringInPage.Model),
                BringInModel.Of(await importing.Preview(workshop, stop), workshop, Encoding.UTF8.GetString(bytes), key)))
            : Refused(read.Reasons);
    }

    private static RazorComponentResult<BringInPage> Refused(ValueList<Reason> reasons) =>
        Shown.As<BringInPage>(StatusCodes.Status422UnprocessableEntity, (nameof(BringInPage.Model), BringInModel.Refused(reasons)));

    private static async Task<byte[]> Read(IFormFile? file, CancellationToken stop)
    {
        using var bytes = new MemoryStream();
        if (file is not null)
        {
            await file.CopyToAsync(bytes, stop);
        }

        return bytes.ToArray();
    }
}
