using System.Text.Json;
using EpisodePlanner.Web.Serving;
using EpisodePlanner.Web.Serving.Answers;
using EpisodePlanner.Web.Serving.Requests;
using Microsoft.AspNetCore.OpenApi;
using Microsoft.AspNetCore.WebUtilities;
using Microsoft.OpenApi;

namespace EpisodePlanner.Web.Features.Reference;

/// <summary>Describes an operation by what its handler's arguments and results say of themselves.</summary>
internal sealed class OperationDescription : IOpenApiOperationTransformer
{
    private const string ProblemType = "application/problem+json";

    /// <inheritdoc/>
    public async Task TransformAsync(
        OpenApiOperation operation, OpenApiOperationTransformerContext context, CancellationToken cancellationToken)
    {
        var metadata = context.Description.ActionDescriptor.EndpointMetadata;
        operation.Parameters = [.. ParameterDescriptions.Of(context.Description.RelativePath!, metadata, context.Document!)];
        if (metadata.OfType<BodyOf>().FirstOrDefault() is { } body)
        {
            operation.RequestBody = new OpenApiRequestBody
            {
                Required = true,
                Content = new Dictionary<string, OpenApiMediaType> { [Bytes.Json] = await Media(body.Type, context, cancellationToken) },
            };
        }

        operation.Responses = [];
        foreach (var gives in metadata.OfType<Gives>().OrderBy(gives => gives.Status))
        {
            operation.Responses[$"{gives.Status}"] = await Answer(gives, metadata, context, cancellationToken);
        }

        foreach (var problems in metadata.OfType<Refuses>().SelectMany(refuses => refuses.Types).Distinct().GroupBy(p => p.Status))
        {
            operation.Responses[$"{problems.Key}"] = Refusal([.. problems], context.Document!);
        }
    }

    private static async Task<OpenApiResponse> Answer(
        Gives gives, IList<object> metadata, OpenApiOperationTransformerContext context, CancellationToken stop)
    {
        var response = new OpenApiResponse
        {
            Description = ReasonPhrases.GetReasonPhrase(gives.Status),
            Headers = AnswerHeaders.Of(gives, metadata),
        };
        if (gives.Type is { } type)
        {
            response.Content = new Dictionary<string, OpenApiMediaType>();
            foreach (var contentType in gives.ContentTypes.DefaultIfEmpty(Bytes.Json))
            {
                response.Content[contentType] = await Media(type, context, stop);
            }
        }

        return response;
    }

    private static OpenApiResponse Refusal(ProblemType[] problems, OpenApiDocument document) => new()
    {
        Description = string.Join("; ", problems.Select(problem => $"{problem.Title} (/problems/{problem.Name})")),
        Content = new Dictionary<string, OpenApiMediaType>
        {
            [ProblemType] = new OpenApiMediaType { Schema = new OpenApiSchemaReference(DocumentDescription.ProblemSchema, document) },
        },
    };

    private static async Task<IOpenApiSchema> Schema(Type type, OpenApiOperationTransformerContext context, CancellationToken stop)
    {
        if (ReferenceSchemas.Knows(type))
        {
            return new OpenApiSchemaReference(ReferenceSchemas.NameOf(type), context.Document);
        }

        var schema = await context.GetOrCreateSchemaAsync(type, null, stop);
        return type == typeof(string) ? schema : new OpenApiSchemaReference(AddComponent(type.Name, schema, context.Document!), context.Document);
    }

    private static string AddComponent(string type, OpenApiSchema schema, OpenApiDocument document)
    {
        var name = JsonNamingPolicy.CamelCase.ConvertName(type);
        document.AddComponent<IOpenApiSchema>(name, schema);
        return name;
    }

    private static async Task<OpenApiMediaType> Media(Type type, OpenApiOperationTransformerContext context, CancellationToken stop)
    {
        var media = new OpenApiMediaType { Schema = await Schema(type, context, stop) };
        if (ReferenceExamples.Find(type) is { } example)
        {
            media.Example = example;
        }

        return media;
    }
}
