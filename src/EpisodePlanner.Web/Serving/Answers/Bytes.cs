using Microsoft.Net.Http.Headers;

namespace EpisodePlanner.Web.Serving.Answers;

/// <summary>Writes bytes as an answer.</summary>
internal static class Bytes
{
    /// <summary>The type of everything that is no page of writing and no problem.</summary>
    public const string Json = "application/json";

    /// <summary>Writes an answer.</summary>
    public static Task Write(
        HttpContext context, int status, ReadOnlyMemory<byte> bytes, EntityTagHeaderValue? tag, string type = Json)
    {
        var response = context.Response;
        response.StatusCode = status;
        response.ContentType = type;
        response.ContentLength = bytes.Length;
        Head(context, tag);
        return HttpMethods.IsHead(context.Request.Method)
            ? Task.CompletedTask
            : response.Body.WriteAsync(bytes, context.RequestAborted).AsTask();
    }

    /// <summary>Sets what a 200 and a 304 have in common: a tag, and that a cache must ask before it uses what it has.</summary>
    public static void Head(HttpContext context, EntityTagHeaderValue? tag)
    {
        if (tag is null)
        {
            return;
        }

        context.Response.Headers.ETag = tag.ToString();
        context.Response.Headers.CacheControl = "private, no-cache";
    }
}
