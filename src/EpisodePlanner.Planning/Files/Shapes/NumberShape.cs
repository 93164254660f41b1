using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using EpisodePlanner.Planning.Files.Text;

namespace EpisodePlanner.Planning.Files.Shapes;

/// <summary>Decimal or whole numbers between two bounds.</summary>
internal sealed class NumberShape(Type type, decimal least, decimal most) : Shape
{
    private readonly bool whole = type != typeof(decimal);

    private readonly Func<decimal, object> box =
        type == typeof(int) ? number => (int)number
        : type == typeof(long) ? number => (long)number
        : number => number;

    public override Type Type => type;

    public override string Wanted =>
        $"a {(whole ? "whole number" : "number")} from {Say.Number(least)} to {Say.Number(most)}";

    public override object Placeholder => box(Math.Clamp(1, least, most));

    public override object Read(JsonElement element, Reading reading)
    {
        if (element.ValueKind != JsonValueKind.Number)
        {
            reading.RefuseKind(element, Wanted);
            return Placeholder;
        }

        if (element.TryGetDecimal(out var number) && number >= least && number <= most
            && (!whole || decimal.IsInteger(number)))
        {
            return box(number);
        }

        reading.Refuse($"{Shown(element)} can't stand here; {Wanted} would be right.");
        return Placeholder;
    }

    public override void Write(CanonicalWriter writer, object value) => writer.Raw(Format(Unbox(value)));

    public override int Compare(object left, object right) => Unbox(left).CompareTo(Unbox(right));

    public override JsonObject Describe(SchemaParts parts)
    {
        var schema = new JsonObject { ["type"] = whole ? "integer" : "number" };
        schema["minimum"] = JsonNode.Parse(Format(least));
        schema["maximum"] = JsonNode.Parse(Format(most));
        return schema;
    }

    private static string Shown(JsonElement element)
    {
        var text = element.GetRawText();
        return text.Length > 30 ? text[..30] + "…" : text;
    }

    /// <summary>Shortest form: no exponent, no zeros at the end.</summary>
    private static string Format(decimal number)
    {
        var text = number.ToString(CultureInfo.InvariantCulture);
        if (text.Contains('.', StringComparison.Ordinal))
        {
            text = text.TrimEnd('0').TrimEnd('.');
        }

        return text is "-0" ? "0" : text;
    }

    private static decimal Unbox(object value) => value switch
    {
        int number => number,
        long number => number,
        _ => (decimal)value,
    };
}
