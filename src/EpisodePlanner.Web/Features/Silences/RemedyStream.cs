using System.Reflection;
using EpisodePlanner.Planning;
using EpisodePlanner.Web.Serving.Answers;
using EpisodePlanner.Web.Serving.Requests;
using Microsoft.AspNetCore.Http.Metadata;

namespace EpisodePlanner.Web.Features.Silences;

/// <summary>Ways out of a silence, each sent as soon as it is found: a <see cref="FoundRemediesDocument"/> that grows.</summary>
/// <param name="finding">Finds them.</param>
internal sealed class RemedyStream(IAsyncEnumerable<Remedy> finding) : IResult, IEndpointMetadataProvider
{
    /// <inheritdoc/>
    public async Task ExecuteAsync(HttpContext httpContext)
    {
        var response = httpContext.Response;
        response.ContentType = Bytes.Json;
        response.Headers.CacheControl = "no-store";
        if (HttpMethods.IsHead(httpContext.Request.Method))
        {
            return;
        }

        await response.Body.WriteAsync("{\"found\":["u8.ToArray(), httpContext.RequestAborted);
        var isFirst = true;
        await foreach (var remedy in finding.WithCancellation(httpContext.RequestAborted))
        {
            if (!isFirst)
            {
                await response.Body.WriteAsync(",\n"u8.ToArray(), httpContext.RequestAborted);
            }

            isFirst = false;
            await response.Body.WriteAsync(DocumentJson.Write(SilenceDocuments.Of(remedy)), httpContext.RequestAborted);
            await response.Body.FlushAsync(httpContext.RequestAborted);
        }

        await response.Body.WriteAsync("]}"u8.ToArray(), httpContext.RequestAborted);
    }

    /// <inheritdoc/>
    public static void PopulateMetadata(MethodInfo method, EndpointBuilder builder) =>
        builder.Metadata.Add(new Gives(StatusCodes.Status200OK, typeof(FoundRemediesDocument)));
}
