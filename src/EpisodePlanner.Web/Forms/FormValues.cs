using System.Text.Json;
using System.Text.Json.Nodes;

namespace EpisodePlanner.Web.Forms;

/// <summary>Values of a thing as they stand in fields.</summary>
internal static class FormValues
{
    private const string MomentFormat = "date-time";

    /// <summary>A value as text; empty where there is none.</summary>
    public static string Text(JsonNode? value) => value switch
    {
        null => "",
        JsonValue text when text.GetValueKind() == JsonValueKind.String => text.GetValue<string>(),
        _ => value.ToJsonString(),
    };

    /// <summary>The values of an array as texts.</summary>
    public static IEnumerable<string> Texts(JsonNode? value) => (value as JsonArray ?? []).Select(Text);

    /// <summary>Whether a member is a moment, which is typed on the workshop's clock.</summary>
    public static bool IsMoment(FormMember member) => (string?)member.Schema["format"] == MomentFormat;

    /// <summary>What is typed into the field of a member.</summary>
    public static string InputType(FormMember member) => ((string?)member.Schema["format"], (string?)member.Schema["pattern"]) switch
    {
        ("date", _) => "date",
        (MomentFormat, _) => "datetime-local",
        (_, { } pattern) when pattern.StartsWith("^([01]", StringComparison.Ordinal) => "time",
        (_, { } pattern) when pattern.StartsWith("^[0-9]{4}", StringComparison.Ordinal) => "datetime-local",
        _ => "text",
    };
}
