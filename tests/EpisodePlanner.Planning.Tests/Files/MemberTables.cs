using System.Text;
using System.Text.Json;

namespace EpisodePlanner.Planning.Tests.Files;

/// <summary>The tables of all members in <c>FORMAT.md</c>, made from the schema.</summary>
internal static class MemberTables
{
    public static string Of(string schema)
    {
        using var document = JsonDocument.Parse(schema);
        var text = new StringBuilder();
        Append(text, "workshop", document.RootElement);
        foreach (var record in document.RootElement.GetProperty("$defs").EnumerateObject().OrderBy(record => record.Name, StringComparer.Ordinal))
        {
            Append(text, record.Name, record.Value);
        }

        return text.ToString();
    }

    private static void Append(StringBuilder text, string name, JsonElement record)
    {
        var required = record.TryGetProperty("required", out var names)
            ? names.EnumerateArray().Select(item => item.GetString()).ToHashSet()
            : [];
        text.Append($"\n### {name}\n\n{Says(record)}\n\n| member | value | meaning |\n|-|-|-|\n");
        foreach (var member in record.GetProperty("properties").EnumerateObject())
        {
            var shown = required.Contains(member.Name) ? $"**{member.Name}**" : member.Name;
            text.Append($"| {shown} | {Value(member.Value)} | {Says(member.Value)} |\n");
        }
    }

    private static string Says(JsonElement schema) => schema.GetProperty("description").GetString()!;

    private static string Value(JsonElement schema)
    {
        if (schema.TryGetProperty("$ref", out var reference))
        {
            return Link(reference.GetString()!);
        }

        return schema.GetProperty("type").GetString() switch
        {
            "array" => $"array of {Value(schema.GetProperty("items"))}",
            "boolean" => "true or false",
            "integer" => $"whole number {Bounds(schema)}",
            "number" => $"number {Bounds(schema)}",
            _ => Text(schema),
        };
    }

    private static string Link(string reference) => $"[{reference.Split('/')[^1]}](#{reference.Split('/')[^1].ToLowerInvariant()})";

    private static string Bounds(JsonElement schema) => $"{schema.GetProperty("minimum")} to {schema.GetProperty("maximum")}";

    private static string Text(JsonElement schema)
    {
        if (schema.TryGetProperty("oneOf", out var names))
        {
            return string.Join(", ", names.EnumerateArray().Select(name => $"`{name.GetProperty("const")}`"));
        }

        return schema switch
        {
            _ when schema.TryGetProperty("maxLength", out var most) => $"text, at most {most}",
            _ when schema.TryGetProperty("format", out var format) => format.GetString() == "date" ? "date" : "moment",
            _ when schema.GetProperty("pattern").GetString()!.Contains("A-Za-z", StringComparison.Ordinal) => "id",
            _ => schema.GetProperty("pattern").GetString()!.Contains('T', StringComparison.Ordinal) ? "date and time" : "time",
        };
    }
}
