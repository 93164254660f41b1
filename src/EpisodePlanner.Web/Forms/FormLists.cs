using System.Globalization;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;

namespace EpisodePlanner.Web.Forms;

/// <summary>Adds groups to the lists of a form that is being filled in, removes them, and moves them up.</summary>
public static partial class FormLists
{
    /// <summary>Adds an empty group to a list of the document; nothing where there is no such place.</summary>
    /// <param name="document">The document.</param>
    /// <param name="list">The list's path: "stages", "hours.weekly".</param>
    public static void Add(JsonObject document, string list)
    {
        var segments = list.Split('.');
        JsonNode? at = document;
        foreach (var segment in segments[..^1])
        {
            at = Enter(at, segment, makes: true);
        }

        if (at is JsonObject owner && Plain().IsMatch(segments[^1]))
        {
            var items = owner[segments[^1]] as JsonArray ?? [];
            owner[segments[^1]] = items;
            items.Add(new JsonObject());
        }
    }

    /// <summary>Removes a group: "stages[2]"; nothing where there is none.</summary>
    public static void Remove(JsonObject document, string item)
    {
        if (Find(document, item) is var (items, index))
        {
            items.RemoveAt(index);
        }
    }

    /// <summary>Moves a group before the one before it; nothing where there is none.</summary>
    public static void MoveUp(JsonObject document, string item)
    {
        if (Find(document, item) is var (items, index) && index > 0)
        {
            var moved = items[index];
            items.RemoveAt(index);
            items.Insert(index - 1, moved);
        }
    }

    private static (JsonArray Items, int Index)? Find(JsonObject document, string item)
    {
        if (Indexed().Match(item) is not { Success: true } last)
        {
            return null;
        }

        JsonNode? at = document;
        foreach (var segment in last.Groups["list"].Value.Split('.'))
        {
            at = Enter(at, segment, makes: false);
        }

        var index = int.Parse(last.Groups["index"].ValueSpan, CultureInfo.InvariantCulture);
        return at is JsonArray items && index < items.Count ? (items, index) : null;
    }

    private static JsonNode? Enter(JsonNode? at, string segment, bool makes)
    {
        if (Indexed().Match(segment) is { Success: true } inside)
        {
            var index = int.Parse(inside.Groups["index"].ValueSpan, CultureInfo.InvariantCulture);
            return Enter(at, inside.Groups["list"].Value, makes: false) is JsonArray items && index < items.Count ? items[index] : null;
        }

        if (at is not JsonObject owner)
        {
            return null;
        }

        if (owner[segment] is null && makes && Plain().IsMatch(segment))
        {
            owner[segment] = new JsonObject();
        }

        return owner[segment];
    }

    [GeneratedRegex(@"^(?<list>.+)\[(?<index>[0-9]{1,4})\]$")]
    private static partial Regex Indexed();

    [GeneratedRegex("^[a-zA-Z]{1,40}$")]
    private static partial Regex Plain();
}
