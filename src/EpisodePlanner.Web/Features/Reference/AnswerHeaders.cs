using EpisodePlanner.Web.Serving.Requests;
using Microsoft.Net.Http.Headers;
using Microsoft.OpenApi;

namespace EpisodePlanner.Web.Features.Reference;

/// <summary>The headers of an answer.</summary>
internal static class AnswerHeaders
{
    /// <summary>Those of an answer of an operation.</summary>
    public static Dictionary<string, IOpenApiHeader>? Of(Gives gives, IList<object> metadata, OpenApiDocument document)
    {
        var isMade = gives.Status == StatusCodes.Status201Created;
        var takesTags = metadata.OfType<TakesHeaders>().Any(takes => takes.Names.Contains(HeaderNames.IfMatch));
        var headers = new Dictionary<string, IOpenApiHeader>();
        if (isMade || (takesTags && gives.Status != StatusCodes.Status204NoContent))
        {
            headers[HeaderNames.ETag] = Shared(
                HeaderNames.ETag, "The version of what is shown, for If-Match and If-None-Match (RFC 9110 §8.8.3).", "\"17\"", document);
        }

        if (isMade)
        {
            headers[HeaderNames.Location] = Shared(
                HeaderNames.Location, "The address of what was made.", $"{Api.Root}/workshops/my-shed/tasks/weld-frame", document);
        }

        return headers.Count > 0 ? headers : null;
    }

    private static OpenApiHeaderReference Shared(string name, string says, string example, OpenApiDocument document)
    {
        document.Components ??= new OpenApiComponents();
        document.Components.Headers ??= new SortedDictionary<string, IOpenApiHeader>(StringComparer.Ordinal);
        document.Components.Headers.TryAdd(name, new OpenApiHeader
        {
            Description = says,
            Schema = new OpenApiSchema { Type = JsonSchemaType.String },
            Example = example,
        });
        return new OpenApiHeaderReference(name, document);
    }
}
