using EpisodePlanner.Web.Serving.Answers;
using Microsoft.AspNetCore.Http.Metadata;
using Microsoft.Net.Http.Headers;

namespace EpisodePlanner.Web.Serving.Requests;

/// <summary>The bytes of a request's body, where they may be JSON.</summary>
internal static class RequestBody
{
    /// <summary>Reads the whole body.</summary>
    /// <returns>The bytes, or why they are not taken.</returns>
    public static async ValueTask<(ReadOnlyMemory<byte> Bytes, Problem? Refusal)> Read(HttpRequest request, CancellationToken stop)
    {
        if (!IsJson(request.ContentType))
        {
            return (default, Refusals.NotJson(request.ContentType));
        }

        var most = request.HttpContext.GetEndpoint()?.Metadata.GetMetadata<IRequestSizeLimitMetadata>()?.MaxRequestBodySize ?? BodyLimits.Usual;
        using var bytes = new MemoryStream((int)Math.Clamp(request.ContentLength ?? 0, 0, most));
        var chunk = new byte[16 * 1_024];
        while (await request.Body.ReadAsync(chunk, stop) is var read and > 0)
        {
            bytes.Write(chunk, 0, read);
            if (bytes.Length > most)
            {
                return (default, Refusals.TooLarge(most));
            }
        }

        return (bytes.GetBuffer().AsMemory(0, (int)bytes.Length), null);
    }

    private static bool IsJson(string? contentType) =>
        MediaTypeHeaderValue.TryParse(contentType, out var type)
        && type.MatchesMediaType("application/json")
        && (!type.Charset.HasValue || type.Charset.Equals("utf-8", StringComparison.OrdinalIgnoreCase));
}
