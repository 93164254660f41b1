using System.Net;
using Ganss.Xss;
using Markdig;

namespace EpisodePlanner.Writing;

/// <summary>Markdown as HTML that can be put into any page: whatever the text says, it runs nothing and loads nothing.</summary>
/// <remarks>
/// Two layers that don't know of each other: HTML in the Markdown is shown as text, and of what comes out only the plain
/// elements of a written page are let through. Pictures are left out, because loading one tells its server who reads.
/// </remarks>
public static class SafeHtml
{
    private static readonly MarkdownPipeline Pipeline = new MarkdownPipelineBuilder().DisableHtml().Build();
    private static readonly HtmlSanitizer Sanitizer = Strict();

    /// <summary>The HTML of a Markdown text, without a page around it.</summary>
    public static string Of(string markdown)
    {
        try
        {
            return Sanitizer.Sanitize(Markdig.Markdown.ToHtml(markdown, Pipeline));
        }
        catch (ArgumentException)
        {
            // Nested deeper than any reader goes: shown as it was written.
            return $"<pre>{WebUtility.HtmlEncode(markdown)}</pre>";
        }
    }

    private static HtmlSanitizer Strict()
    {
        var sanitizer = new HtmlSanitizer(new HtmlSanitizerOptions
        {
            AllowedTags = Set(
                "a", "blockquote", "br", "code", "em", "h1", "h2", "h3", "h4", "h5", "h6", "hr", "li", "ol", "p", "pre", "strong", "ul"),
            AllowedAttributes = Set("href", "start", "title"),
            AllowedSchemes = Set("http", "https", "mailto"),
            UriAttributes = Set("href"),
        });
        sanitizer.PostProcessNode += (_, visit) =>
        {
            // A page that is opened learns nothing of this one, and gains no standing from it.
            if (visit.Node is AngleSharp.Dom.IElement { LocalName: "a" } link)
            {
                link.SetAttribute("rel", "nofollow noopener noreferrer");
            }
        };
        return sanitizer;
    }

    private static HashSet<string> Set(params IEnumerable<string> names) => new(names, StringComparer.OrdinalIgnoreCase);
}
