using System.Globalization;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Unicode;

namespace EpisodePlanner.Web.Serving;

/// <summary>An answer that says what is wrong; made by <see cref="Problems"/>.</summary>
public sealed class Problem : IResult, IStatusCodeHttpResult, IValueHttpResult<ProblemDocument>
{
    /// <summary>The media type of a problem.</summary>
    public const string MediaType = "application/problem+json";

    private static readonly JsonSerializerOptions Json = new(JsonSerializerDefaults.Web)
    {
        DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
        Encoder = JavaScriptEncoder.Create(UnicodeRanges.All),
    };

    internal Problem(ProblemDocument document, int? retryAfter = null) => (Document, RetryAfter) = (document, retryAfter);

    /// <summary>What it says.</summary>
    public ProblemDocument Document { get; }

    /// <summary>After how many seconds to ask again; null where that would not help.</summary>
    public int? RetryAfter { get; }

    int? IStatusCodeHttpResult.StatusCode => Document.Status;

    ProblemDocument? IValueHttpResult<ProblemDocument>.Value => Document;


    /// <inheritdoc/>
    public async Task ExecuteAsync(HttpContext httpContext)
    {
        var response = httpContext.Response;
        response.StatusCode = Document.Status;
        response.Headers.CacheControl = "no-store";
        if (RetryAfter is { } seconds)
        {
            response.Headers.RetryAfter = seconds.ToString(CultureInfo.InvariantCulture);
        }

        if (ProblemPages.IsAskedForBy(httpContext.Request))
        {
            await ProblemPages.Of(Document).ExecuteAsync(httpContext).ConfigureAwait(false);
        }
        else if (!HttpMethods.IsHead(httpContext.Request.Method))
        {
            // Without the request's token: a request whose time is over is told so when the token is cancelled already.
            await response.WriteAsJsonAsync(Document, Json, MediaType, CancellationToken.None).ConfigureAwait(false);
        }
    }
}
