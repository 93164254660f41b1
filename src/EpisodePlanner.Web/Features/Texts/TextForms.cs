using Microsoft.Net.Http.Headers;

namespace EpisodePlanner.Web.Features.Texts;

/// <summary>The forms in which a text can be had, and which of them a request prefers (RFC 9110 §12.5.1).</summary>
internal static class TextForms
{
    /// <summary>Markdown as it was written.</summary>
    public const string Markdown = "text/markdown";

    /// <summary>The same as HTML that runs and loads nothing.</summary>
    public const string Html = "text/html";

    private static readonly string[] All = [Markdown, Html];

    /// <summary>The form to give; Markdown where both are as welcome, null where neither is.</summary>
    public static string? Choose(IList<MediaTypeHeaderValue> accept)
    {
        if (accept.Count == 0)
        {
            return Markdown;
        }

        var best = All.Select(form => (Form: form, Quality: QualityOf(form, accept))).MaxBy(choice => choice.Quality);
        return best.Quality > 0 ? best.Form : null;
    }

    /// <summary>The quality that the most specific range gives a form; 0 where none speaks of it.</summary>
    private static double QualityOf(string form, IList<MediaTypeHeaderValue> accept) => accept
        .Where(range => new MediaTypeHeaderValue(form).IsSubsetOf(WithoutParameters(range)))
        .OrderBy(range => range.MatchesAllTypes ? 2 : range.MatchesAllSubTypes ? 1 : 0)
        .Select(range => range.Quality ?? 1)
        .FirstOrDefault();

    private static MediaTypeHeaderValue WithoutParameters(MediaTypeHeaderValue range) => new(range.MediaType);
}
