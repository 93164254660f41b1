using EpisodePlanner.Web.Serving.Answers;
using EpisodePlanner.Web.Serving.Requests;
using Microsoft.AspNetCore.OpenApi;
using Microsoft.AspNetCore.WebUtilities;
using Microsoft.OpenApi;

namespace EpisodePlanner.Web.Features.Reference;

/// <summary>Describes an operation by what its handler's arguments and results say of themselves.</summary>
internal sealed class OperationDescription : IOpenApiOperationTransformer
{
    /// <inheritdoc/>
    public Task TransformAsync(
        OpenApiOperation operation, OpenApiOperationTransformerContext context, CancellationToken cancellationToken)
    {
        var (metadata, document) = (context.Description.ActionDescriptor.EndpointMetadata, context.Document!);
        operation.Parameters = [.. ParameterDescriptions.Of(context.Description.RelativePath!, metadata, document)];
        if (metadata.OfType<BodyOf>().FirstOrDefault() is { } body)
        {
            operation.RequestBody = new OpenApiRequestBody
            {
                Required = true,
                Content = new Dictionary<string, OpenApiMediaType> { [Bytes.Json] = Media(body.Type, document) },
            };
        }

        var found = operation.Responses ?? [];
        operation.Responses = [];
        foreach (var gives in metadata.OfType<Gives>().OrderBy(gives => gives.Status))
        {
            var known = found.TryGetValue($"{gives.Status}", out var response) ? response.Content : null;
            operation.Responses[$"{gives.Status}"] = Answer(gives, known, metadata, document);
        }

        var problems = metadata.OfType<Refuses>().SelectMany(refuses => refuses.Types).Distinct();
        foreach (var alike in problems.GroupBy(type => type.Status).OrderBy(group => group.Key))
        {
            operation.Responses[$"{alike.Key}"] = ProblemDescriptions.Of([.. alike], document);
        }

        return Task.CompletedTask;
    }

    private static OpenApiResponse Answer(
        Gives gives, IDictionary<string, OpenApiMediaType>? known, IList<object> metadata, OpenApiDocument document) => new()
        {
            Description = ReasonPhrases.GetReasonPhrase(gives.Status),
            Headers = AnswerHeaders.Of(gives, metadata, document),
            Content = gives.Type is not { } type ? null
                : type != typeof(string) && !ReferenceSchemas.Knows(type) ? known
                : gives.ContentTypes.DefaultIfEmpty(Bytes.Json).ToDictionary(contentType => contentType, _ => Media(type, document)),
        };

    private static OpenApiMediaType Media(Type type, OpenApiDocument document) => new()
    {
        Schema = type == typeof(string)
            ? new OpenApiSchema { Type = JsonSchemaType.String }
            : new OpenApiSchemaReference(ReferenceSchemas.NameOf(type), document),
        Example = ReferenceExamples.Find(type),
    };
}
