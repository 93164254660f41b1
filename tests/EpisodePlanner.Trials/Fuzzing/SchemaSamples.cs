using System.Text.Json.Nodes;
using EpisodePlanner.Checking;

namespace EpisodePlanner.Trials.Fuzzing;

/// <summary>JSON that a schema lets in, or nearly: enough to reach what lies behind the reading of a body.</summary>
internal sealed class SchemaSamples(ApiDocument document, Dice dice)
{
    private const int Deepest = 7;

    /// <summary>Ids that are there, and forms of text that some members want.</summary>
    private static readonly string[] Words =
        ["me", "s", "m", "first", "bench-1", "task-1", "task-2", "new-1", "19:00", "2027-02-26", "2027-02-26T19:30", "weld, 2 h", "Etc/UTC"];

    private int optionalInHundred;

    /// <summary>Something of a schema: half of the time only what must be there.</summary>
    public JsonNode? Of(JsonNode? schema)
    {
        optionalInHundred = dice.Pick([0, 25]);
        return Of(schema, 0);
    }

    private JsonNode? Of(JsonNode? schema, int depth)
    {
        schema = document.Resolve(schema);
        if (schema is not JsonObject || depth > Deepest)
        {
            return null;
        }

        if (schema["const"] is { } only)
        {
            return only.DeepClone();
        }

        if (schema["enum"]?.AsArray() is { Count: > 0 } choices)
        {
            return choices[dice.Between(0, choices.Count - 1)]?.DeepClone();
        }

        return Choice(schema) is { } chosen ? Of(chosen, depth + 1) : OfType(schema, depth);
    }

    private JsonNode? Choice(JsonNode schema) => (schema["oneOf"] ?? schema["anyOf"])?.AsArray() is { Count: > 0 } choices
        ? choices[dice.Between(0, choices.Count - 1)]
        : null;

    private JsonNode? OfType(JsonNode schema, int depth) => TypeOf(schema) switch
    {
        "object" => OfObject(schema, depth),
        "array" => OfArray(schema, depth),
        "string" => OfString(schema),
        "integer" => dice.Between(Bound(schema, "minimum", 0), Math.Max(Bound(schema, "minimum", 0), Bound(schema, "maximum", 100))),
        "number" => Bound(schema, "minimum", 0) + (dice.Between(0, 4) / 4.0),
        "boolean" => dice.Chance(50),
        _ => null,
    };

    private string? TypeOf(JsonNode schema) => schema["type"] switch
    {
        JsonArray types => dice.Pick([.. types.Select(type => type!.GetValue<string>())]),
        JsonValue type => type.GetValue<string>(),
        _ => schema["properties"] is null ? null : "object",
    };

    private JsonObject OfObject(JsonNode schema, int depth)
    {
        var required = (schema["required"]?.AsArray() ?? []).Select(name => name!.GetValue<string>()).ToHashSet();
        var made = new JsonObject();
        foreach (var (name, member) in schema["properties"]?.AsObject() ?? [])
        {
            if (required.Contains(name) || dice.Chance(optionalInHundred))
            {
                made[name] = Of(member, depth + 1);
            }
        }

        return made;
    }

    private JsonArray OfArray(JsonNode schema, int depth)
    {
        var count = dice.Between(Bound(schema, "minItems", 0), Math.Max(Bound(schema, "minItems", 0), 2));
        return [.. Enumerable.Range(0, count).Select(_ => Of(schema["items"], depth + 1))];
    }

    private string OfString(JsonNode schema) => schema["format"]?.GetValue<string>() switch
    {
        "date" => "2027-02-26",
        "time" => "19:30",
        "date-time" => "2027-02-26T19:30:00Z",
        "uuid" => "0190a3c4-0000-7000-8000-000000000001",
        _ => dice.Pick(Words),
    };

    private static int Bound(JsonNode schema, string name, int otherwise) =>
        schema[name] is JsonValue value && value.TryGetValue<double>(out var bound)
            ? (int)Math.Clamp(bound, -1_000_000, 1_000_000)
            : otherwise;
}
