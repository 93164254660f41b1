using System.Globalization;
using System.Text.Json.Nodes;
using EpisodePlanner.Planning;
using NodaTime;
using NodaTime.Text;

namespace EpisodePlanner.Web.Forms;

/// <summary>
/// Turns what was typed into a form into the thing's document, as its file would hold it. Nothing is judged here: what
/// can't be right stays as it was typed, so that the reader of the document says what is wrong with it.
/// </summary>
/// <param name="workshop">What can be referred to by name, and the zone of moments.</param>
/// <param name="typed">The values of a field by its name; none where it was not sent.</param>
public sealed class FormReader(Workshop workshop, Func<string, IReadOnlyList<string>> typed)
{
    /// <summary>The most groups that are read of one list; the document's own limits are lower.</summary>
    private const int MostItems = 2_000;

    private static readonly LocalDateTimePattern LocalPattern =
        LocalDateTimePattern.CreateWithInvariantCulture("uuuu'-'MM'-'dd'T'HH':'mm");

    private readonly FormReferences references = new(workshop);

    /// <summary>The name of the field that tells how many groups a list has.</summary>
    public static string CountOf(string list) => list + ".count";

    /// <summary>The document of a record.</summary>
    /// <param name="definition">Its name in the schema: "workTask".</param>
    public JsonObject Read(string definition) => Group("", definition);

    private JsonObject Group(string name, string definition)
    {
        var group = new JsonObject();
        foreach (var member in FormSchema.Members(definition))
        {
            var path = name.Length == 0 ? member.Name : $"{name}.{member.Name}";
            if (Value(path, member) is { } value)
            {
                group[member.Name] = value;
            }
        }

        return group;
    }

    private JsonNode? Value(string name, FormMember member) => member.Entry switch
    {
        FormEntry.Group => Group(name, member.Record!) is { Count: > 0 } group ? group : null,
        FormEntry.List => List(name, member.ItemRecord!),
        FormEntry.Tick => Tick(name),
        FormEntry.Several => Array(typed(name)),
        FormEntry.Lines => Array(Lines(name)),
        FormEntry.Needs => Needs(name),
        FormEntry.Number => Number(One(name)),
        FormEntry.Hidden when One(name) is "true" => JsonValue.Create(true),
        _ => Text(One(name), member),
    };

    private string One(string name) => typed(name) is [var first, ..] ? first : "";

    private string[] Lines(string name) =>
        One(name).Split('\n', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);

    private JsonArray? List(string name, string definition)
    {
        _ = int.TryParse(One(CountOf(name)), NumberStyles.None, CultureInfo.InvariantCulture, out var count);
        var items = Enumerable.Range(0, Math.Min(count, MostItems)).Select(i => (JsonNode)Group($"{name}[{i}]", definition)).ToArray();
        return items.Length > 0 ? new JsonArray(items) : null;
    }

    /// <summary>A box that is not ticked is not sent; a field beside it, always sent, tells that it stood in the form.</summary>
    private JsonValue? Tick(string name) => typed(name) switch
    {
        [] => null,
        var values => JsonValue.Create(values.Contains("true")),
    };

    private JsonArray? Needs(string name)
    {
        var choices = Lines(name).Select(line => (JsonNode?)Array(references.StationsOn(line))).ToArray();
        return choices.Length > 0 ? new JsonArray(choices) : null;
    }

    private static JsonArray? Array(IEnumerable<string> texts)
    {
        var values = texts.Where(text => text.Length > 0).Select(text => (JsonNode?)JsonValue.Create(text)).ToArray();
        return values.Length > 0 ? new JsonArray(values) : null;
    }

    /// <summary>A number, with a decimal comma or point; a text where it is none.</summary>
    private static JsonValue? Number(string text)
    {
        var trimmed = text.Trim();
        if (trimmed.Length == 0)
        {
            return null;
        }

        var isNumber = decimal.TryParse(
            trimmed.Replace(',', '.'), NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var number);
        return isNumber ? JsonValue.Create(number) : JsonValue.Create(text);
    }

    private JsonValue? Text(string text, FormMember member)
    {
        var plain = text.ReplaceLineEndings("\n");
        return plain.Trim().Length == 0 ? null
            : FormValues.IsMoment(member) ? JsonValue.Create(Moment(plain)) : JsonValue.Create(plain);
    }

    /// <summary>A local time as a moment; one that the clocks skip is read as the later one.</summary>
    private string Moment(string text)
    {
        var zone = DateTimeZoneProviders.Tzdb.GetZoneOrNull(workshop.Zone) ?? DateTimeZone.Utc;
        var local = LocalDateTimePattern.GeneralIso.Parse(text) is { Success: true } whole ? whole : LocalPattern.Parse(text);
        return local.Success ? InstantPattern.ExtendedIso.Format(local.Value.InZoneLeniently(zone).ToInstant()) : text;
    }
}
