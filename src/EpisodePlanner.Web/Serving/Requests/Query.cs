using System.Diagnostics.CodeAnalysis;
using System.Reflection;
using System.Text.Json;
using System.Text.Json.Nodes;
using EpisodePlanner.Planning;
using EpisodePlanner.Planning.Files;
using Microsoft.AspNetCore.Http.Metadata;
using Microsoft.Extensions.Primitives;

namespace EpisodePlanner.Web.Serving.Requests;

/// <summary>
/// The query of a request as a record, read as strictly as a body: unknown names, values out of range and repetitions
/// are told all at once.
/// </summary>
/// <typeparam name="T">The record with a member for each parameter.</typeparam>
internal sealed class Query<T> : IRefusable, IBindableFromHttpContext<Query<T>>, IEndpointParameterMetadataProvider
    where T : class
{
    private static readonly HashSet<string> Numbers = MembersOf(typeof(int), typeof(long));
    private static readonly HashSet<string> Choices = MembersOf(typeof(bool));

    private Query(T? value, IResult? refusal) => (Value, Refusal) = (value, refusal);

    /// <summary>What the query says; present wherever a handler is called.</summary>
    [NotNull]
    public T? Value => field ?? throw new InvalidOperationException("The query was refused.");

    /// <inheritdoc/>
    public IResult? Refusal { get; }

    /// <inheritdoc/>
    public static ValueTask<Query<T>?> BindAsync(HttpContext context, ParameterInfo parameter)
    {
        var (members, reasons) = (new JsonObject(), new List<Reason>());
        foreach (var (name, values) in context.Request.Query)
        {
            members[name] = Node(name, values);
            if (values.Count > 1)
            {
                reasons.Add(new Reason($"$.{name}", "This parameter stands here more than once; keep one of them."));
            }
        }

        var read = WorkshopFile.Read<T>(JsonSerializer.SerializeToUtf8Bytes(members));
        reasons.AddRange(read.Reasons);
        return ValueTask.FromResult<Query<T>?>(new(read.Thing, reasons.Count == 0 ? null : Problems.Invalid(reasons)));
    }

    /// <inheritdoc/>
    public static void PopulateMetadata(ParameterInfo parameter, EndpointBuilder builder)
    {
        builder.Metadata.Add(new QueryOf(typeof(T)));
        builder.Metadata.Add(new Refuses(ProblemTypes.Invalid));
    }

    private static HashSet<string> MembersOf(params Type[] types) => [.. typeof(T).GetProperties()
        .Where(property => types.Contains(Nullable.GetUnderlyingType(property.PropertyType) ?? property.PropertyType))
        .Select(property => JsonNamingPolicy.CamelCase.ConvertName(property.Name))];

    private static JsonValue Node(string name, StringValues values) =>
        Numbers.Contains(name) && decimal.TryParse(values[0], out var number) ? JsonValue.Create(number)
        : Choices.Contains(name) && values[0] is "true" or "false" ? JsonValue.Create(values[0] == "true")
        : JsonValue.Create(values[0] ?? "");
}
