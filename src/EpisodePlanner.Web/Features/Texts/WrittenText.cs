using System.Reflection;
using System.Text;
using EpisodePlanner.Web.Serving.Answers;
using EpisodePlanner.Web.Serving.Requests;
using EpisodePlanner.Writing;
using Microsoft.AspNetCore.Http.Metadata;
using Microsoft.Net.Http.Headers;

namespace EpisodePlanner.Web.Features.Texts;

/// <summary>A text in the form that was asked for: 200.</summary>
/// <param name="markdown">The text.</param>
/// <param name="form">Its form, one of <see cref="TextForms"/>.</param>
/// <param name="tag">The tag of the text in this form.</param>
internal sealed class WrittenText(string markdown, string form, EntityTagHeaderValue tag) : IResult, IEndpointMetadataProvider
{
    /// <inheritdoc/>
    public Task ExecuteAsync(HttpContext httpContext)
    {
        httpContext.Response.Headers.Vary = HeaderNames.Accept;
        var text = form == TextForms.Html ? SafeHtml.Of(markdown) : markdown;
        return Bytes.Write(httpContext, StatusCodes.Status200OK, Encoding.UTF8.GetBytes(text), tag, $"{form}; charset=utf-8");
    }

    /// <inheritdoc/>
    public static void PopulateMetadata(MethodInfo method, EndpointBuilder builder) =>
        builder.Metadata.Add(new Gives(StatusCodes.Status200OK, typeof(string), TextForms.Markdown, TextForms.Html));
}
