using EpisodePlanner.Web.Serving;
using Microsoft.OpenApi;
using Scalar.AspNetCore;

namespace EpisodePlanner.Web.Features.Reference;

/// <summary>The description of the API for programs (OpenAPI 3.1), and a page to browse it.</summary>
internal static class OpenApiFeature
{
    /// <summary>Where the description is.</summary>
    public const string DocumentPath = "/openapi/v1.json";

    /// <summary>Where the page is.</summary>
    public const string PagePath = "/reference";

    private const string DocumentName = "v1";

    /// <summary>The page writes script and style into itself; it still loads nothing from elsewhere.</summary>
    private static readonly ContentPolicy PagePolicy = new(
        "default-src 'none'; script-src 'self' 'unsafe-inline'; style-src 'self' 'unsafe-inline'; img-src 'self' data: blob:; "
        + "font-src 'self' data:; connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'");

    /// <summary>Adds the description.</summary>
    public static IServiceCollection AddReference(this IServiceCollection services) => services
        .AddSingleton<ReferenceSchemas>()
        .AddOpenApi(DocumentName, options =>
        {
            options.OpenApiVersion = OpenApiSpecVersion.OpenApi3_1;
            options.ShouldInclude = description => $"/{description.RelativePath}".StartsWith(Api.Root, StringComparison.Ordinal);
            options.AddOperationTransformer<OperationDescription>();
            options.AddDocumentTransformer<DocumentDescription>();
        });

    /// <summary>Maps the description and its page, which asks nothing of other hosts.</summary>
    public static void MapReference(this IEndpointRouteBuilder endpoints)
    {
        endpoints.MapOpenApi("/openapi/{documentName}.json");
        endpoints.MapScalarApiReference(PagePath, options =>
        {
            options.WithTitle("Episode Planner: API").WithOpenApiRoutePattern(DocumentPath).DisableAgent().DisableMcp();
            options.DefaultFonts = false;
            options.Telemetry = false;
            options.ShowDeveloperTools = DeveloperToolsVisibility.Never;
        }).WithMetadata(PagePolicy);
    }
}
