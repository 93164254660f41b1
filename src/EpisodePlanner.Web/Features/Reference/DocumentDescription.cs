using Microsoft.AspNetCore.OpenApi;
using Microsoft.OpenApi;

namespace EpisodePlanner.Web.Features.Reference;

/// <summary>What a description says about the API as a whole, with the schemas of everything.</summary>
/// <param name="schemas">The schemas of bodies.</param>
internal sealed class DocumentDescription(ReferenceSchemas schemas) : IOpenApiDocumentTransformer
{
    private static readonly Dictionary<string, string> TagSays = new()
    {
        ["Workshops"] = "Everything one maker plans is a workshop.",
        ["Settings"] = "What holds for the whole workshop.",
        ["Plan"] = "Dates and their causes, computed from the workshop, and the plan the maker accepted.",
        ["Changes"] = "Every change is kept, and can be undone.",
        ["Deleted"] = "What was deleted can be brought back for 30 days.",
        ["Supposes"] = "Drafts of changes beside the real plan.",
        ["Import and export"] = "A whole workshop as one file.",
        ["Texts"] = "What is written from the plan and the log.",
    };

    /// <inheritdoc/>
    public Task TransformAsync(OpenApiDocument document, OpenApiDocumentTransformerContext context, CancellationToken cancellationToken)
    {
        document.Info = new OpenApiInfo
        {
            Title = "Episode Planner",
            Version = "1",
            Description = "Plans the episodes of a maker's builds. Bodies are in the form of the workshop file (FORMAT.md). What is "
                + "read carries an ETag; what is changed needs it back as If-Match. Refusals are problem details (RFC 9457).",
        };
        document.Servers = [new OpenApiServer { Url = "/", Description = "The server that this description comes from." }];
        document.Security = [];
        document.Components ??= new OpenApiComponents();
        document.Components.Schemas ??= new Dictionary<string, IOpenApiSchema>();
        foreach (var (name, schema) in schemas.Components.Append(new(ProblemDescriptions.SchemaName, ProblemDescriptions.Schema())))
        {
            document.Components.Schemas[name] = Schemas.Parse(schema!.AsObject(), document);
        }

        document.Tags = document.Paths.Values.SelectMany(path => path.Operations!.Values).SelectMany(operation => operation.Tags!)
            .Select(tag => tag.Name!).Distinct().Select(Tag).ToHashSet();
        return Task.CompletedTask;
    }

    private static OpenApiTag Tag(string name) => new()
    {
        Name = name,
        Description = TagSays.GetValueOrDefault(name, $"One of the workshop's sets of things: {name}."),
    };
}
