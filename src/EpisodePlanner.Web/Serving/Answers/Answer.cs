using System.Reflection;
using EpisodePlanner.Web.Serving.Requests;
using Microsoft.AspNetCore.Http.Metadata;
using Microsoft.Net.Http.Headers;

namespace EpisodePlanner.Web.Serving.Answers;

/// <summary>JSON that is there, with its tag: 200.</summary>
/// <param name="bytes">The JSON.</param>
/// <param name="tag">The tag of what is shown; null where it has none.</param>
/// <typeparam name="T">The record that the JSON is of.</typeparam>
internal sealed class Answer<T>(ReadOnlyMemory<byte> bytes, EntityTagHeaderValue? tag = null) : IResult, IEndpointMetadataProvider
{
    /// <inheritdoc/>
    public Task ExecuteAsync(HttpContext httpContext) => Bytes.Write(httpContext, StatusCodes.Status200OK, bytes, tag);

    /// <inheritdoc/>
    public static void PopulateMetadata(MethodInfo method, EndpointBuilder builder) =>
        builder.Metadata.Add(new Gives(StatusCodes.Status200OK, typeof(T)));
}

/// <summary>Something was made: 201, with its address.</summary>
/// <param name="location">Its address.</param>
/// <param name="bytes">It as JSON.</param>
/// <param name="tag">Its tag.</param>
/// <typeparam name="T">The record that the JSON is of.</typeparam>
internal sealed class Creation<T>(string location, ReadOnlyMemory<byte> bytes, EntityTagHeaderValue tag) : IResult, IEndpointMetadataProvider
{
    /// <inheritdoc/>
    public Task ExecuteAsync(HttpContext httpContext)
    {
        httpContext.Response.Headers.Location = location;
        return Bytes.Write(httpContext, StatusCodes.Status201Created, bytes, tag);
    }

    /// <inheritdoc/>
    public static void PopulateMetadata(MethodInfo method, EndpointBuilder builder) =>
        builder.Metadata.Add(new Gives(StatusCodes.Status201Created, typeof(T)));
}

/// <summary>It is removed: 204.</summary>
internal sealed class Removed : IResult, IEndpointMetadataProvider
{
    /// <inheritdoc/>
    public Task ExecuteAsync(HttpContext httpContext)
    {
        httpContext.Response.StatusCode = StatusCodes.Status204NoContent;
        return Task.CompletedTask;
    }

    /// <inheritdoc/>
    public static void PopulateMetadata(MethodInfo method, EndpointBuilder builder) =>
        builder.Metadata.Add(new Gives(StatusCodes.Status204NoContent, null));
}

/// <summary>The client has it already: 304, with the same tag that a 200 would carry (RFC 9110 §15.4.5).</summary>
/// <param name="tag">The tag.</param>
internal sealed class NotModified(EntityTagHeaderValue tag) : IResult, IEndpointMetadataProvider
{
    /// <inheritdoc/>
    public Task ExecuteAsync(HttpContext httpContext)
    {
        httpContext.Response.StatusCode = StatusCodes.Status304NotModified;
        Bytes.Head(httpContext, tag);
        return Task.CompletedTask;
    }

    /// <inheritdoc/>
    public static void PopulateMetadata(MethodInfo method, EndpointBuilder builder) =>
        builder.Metadata.Add(new Gives(StatusCodes.Status304NotModified, null));
}
