using System.Text.Json;
using System.Text.Json.Nodes;
using EpisodePlanner.Planning.Files.Text;
using NodaTime;

namespace EpisodePlanner.Planning.Files.Shapes;

/// <summary>One of a few names, in camelCase.</summary>
internal sealed class EnumShape<T> : Shape
    where T : struct, Enum
{
    private readonly T[] values = [.. Enum.GetValues<T>().Where(value => value is not IsoDayOfWeek.None)];
    private readonly Dictionary<string, T> byName;
    private readonly Dictionary<T, string> names;

    public EnumShape()
    {
        names = values.ToDictionary(value => value, value => JsonNamingPolicy.CamelCase.ConvertName(value.ToString()));
        byName = values.ToDictionary(value => names[value], StringComparer.Ordinal);
    }

    public override Type Type => typeof(T);

    public override string Wanted => $"one of {Say.Row(byName.Keys)}";

    public override object Placeholder => values[0];

    public override object Read(JsonElement element, Reading reading)
    {
        if (!reading.TryText(element, Wanted, out var text))
        {
            return Placeholder;
        }

        if (byName.TryGetValue(text, out var value))
        {
            return value;
        }

        reading.Refuse($"{Say.Quote(text)} is not {Wanted}{Say.Proposal(text, byName.Keys)}");
        return Placeholder;
    }

    public override void Write(CanonicalWriter writer, object value) => writer.Text(names[(T)value]);

    public override int Compare(object left, object right) => Comparer<T>.Default.Compare((T)left, (T)right);

    public override JsonObject Describe(SchemaParts parts)
    {
        var each = values.Select(value => (JsonNode?)new JsonObject { ["const"] = names[value] }).ToArray();
        for (var i = 0; i < values.Length; i++)
        {
            parts.Explain(each[i]!.AsObject(), $"F:{typeof(T).FullName}.{values[i]}");
        }

        return new JsonObject { ["type"] = "string", ["oneOf"] = new JsonArray(each) };
    }
}
