using System.IO.Compression;
using Microsoft.AspNetCore.ResponseCompression;

namespace EpisodePlanner.Web.Composition;

/// <summary>
/// Pages, styles, scripts and pictures go out compressed. The API's documents don't: their bytes are kept and named by a
/// strong tag. Tokens of forms are encrypted anew for each page, so that the length of a page tells nothing about them.
/// </summary>
internal static class Compression
{
    private static readonly string[] Kinds = ["text/html", "text/css", "text/javascript", "image/svg+xml"];

    /// <summary>Adds it, by Brotli (RFC 7932) or gzip (RFC 1952) as the browser asks.</summary>
    public static IServiceCollection AddCompression(this IServiceCollection services) => services
        .AddResponseCompression(compression =>
        {
            compression.EnableForHttps = true;
            compression.MimeTypes = Kinds;
            compression.Providers.Add<BrotliCompressionProvider>();
            compression.Providers.Add<GzipCompressionProvider>();
        })
        .Configure<BrotliCompressionProviderOptions>(brotli => brotli.Level = CompressionLevel.Optimal)
        .Configure<GzipCompressionProviderOptions>(gzip => gzip.Level = CompressionLevel.Optimal);
}
