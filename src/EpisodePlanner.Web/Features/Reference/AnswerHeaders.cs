using EpisodePlanner.Web.Serving.Requests;
using Microsoft.Net.Http.Headers;
using Microsoft.OpenApi;

namespace EpisodePlanner.Web.Features.Reference;

/// <summary>The headers of an answer.</summary>
internal static class AnswerHeaders
{
    /// <summary>Those of an answer of an operation.</summary>
    public static IDictionary<string, IOpenApiHeader>? Of(Gives gives, IList<object> metadata)
    {
        var headers = new Dictionary<string, IOpenApiHeader>();
        var isTagged = metadata.OfType<TakesHeaders>().Any(takes => takes.Names.Contains(HeaderNames.IfMatch));
        if (isTagged && gives.Status != StatusCodes.Status204NoContent)
        {
            headers[HeaderNames.ETag] = Text("The version of what is shown, for If-Match and If-None-Match (RFC 9110 §8.8.3).", "\"17\"");
        }

        if (gives.Status == StatusCodes.Status201Created)
        {
            headers[HeaderNames.ETag] = Text("The version of what was made, for If-Match and If-None-Match (RFC 9110 §8.8.3).", "\"17\"");
            headers[HeaderNames.Location] = Text("The address of what was made.", $"{Api.Root}/workshops/my-shed/tasks/weld-frame");
        }

        return headers.Count > 0 ? headers : null;
    }

    private static OpenApiHeader Text(string says, string example) => new()
    {
        Description = says,
        Schema = new OpenApiSchema { Type = JsonSchemaType.String },
        Example = example,
    };
}
