using EpisodePlanner.Planning.Files;
using Microsoft.AspNetCore.Http.Metadata;

namespace EpisodePlanner.Web.Serving;

/// <summary>How large a body may be.</summary>
public static class BodyLimits
{
    /// <summary>Any body: 1 MB.</summary>
    public const int Usual = 1_024 * 1_024;

    /// <summary>A whole workshop: 10 MB, as a file.</summary>
    public const int Import = WorkshopFile.MaximumBytes;

    /// <summary>Lets an endpoint take a whole workshop.</summary>
    public static TBuilder TakesWorkshops<TBuilder>(this TBuilder builder)
        where TBuilder : IEndpointConventionBuilder => builder.WithMetadata(new Limit(Import));

    private sealed record Limit(long? MaxRequestBodySize) : IRequestSizeLimitMetadata;
}
