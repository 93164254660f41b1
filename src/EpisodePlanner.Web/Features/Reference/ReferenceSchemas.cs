using System.Text.Json.Nodes;
using EpisodePlanner.Planning.Files;
using EpisodePlanner.Web.Serving.Requests;

namespace EpisodePlanner.Web.Features.Reference;

/// <summary>The schemas of bodies and queries, from the planner's own reader, so that the two can't differ.</summary>
/// <param name="endpoints">The endpoints that are described.</param>
internal sealed class ReferenceSchemas(EndpointDataSource endpoints)
{
    private const string Root = "#/components/schemas/";

    private readonly Lazy<JsonObject> components = new(() => WorkshopSchema.Parts(
        Root, [.. Bodies(endpoints.Endpoints).Where(Knows).Distinct().OrderBy(NameOf, StringComparer.Ordinal)]));

    /// <summary>The schemas by name.</summary>
    public JsonObject Components => components.Value;

    /// <summary>Whether the planner itself reads and writes bodies of this type.</summary>
    public static bool Knows(Type type) => !typeof(IComputedDocument).IsAssignableFrom(type) && type != typeof(string);

    /// <summary>The name of a record's schema.</summary>
    public static string NameOf(Type type) => WorkshopSchema.NameOf(type);

    /// <summary>The members of a query, each with its schema.</summary>
    public static JsonObject QueryOf(Type type) => WorkshopSchema.Parts(Root, [type])[NameOf(type)]!.AsObject();

    private static IEnumerable<Type> Bodies(IEnumerable<Endpoint> all) => all
        .Where(endpoint => endpoint.Metadata.GetMetadata<Microsoft.AspNetCore.Routing.IExcludeFromDescriptionMetadata>() is null)
        .SelectMany(endpoint => endpoint.Metadata.GetOrderedMetadata<BodyOf>().Select(body => (Type?)body.Type)
            .Concat(endpoint.Metadata.GetOrderedMetadata<Gives>().Select(gives => gives.Type)))
        .OfType<Type>();
}
