using System.Text.Json;
using System.Text.Json.Nodes;
using EpisodePlanner.Planning.Files.Text;

namespace EpisodePlanner.Planning.Files;

/// <summary>Finds the format of a file and brings an older one up to the current format.</summary>
internal static class Upgrading
{
    private static readonly JsonDocumentOptions Strict = new() { AllowDuplicateProperties = false };

    /// <summary>The document in the current format, or why it can't be had.</summary>
    public static Reason? Upgrade(JsonElement document, FormatSteps steps, out JsonElement root)
    {
        root = document;
        if (FormatOf(document) is not { } format || format == Workshop.CurrentFormat)
        {
            return null;
        }

        return steps.CanRead(format)
            ? Run(document, steps, format, out root)
            : new Reason("$.format", $"{format} is a format that this planner does not know; {steps.InWords}.");
    }

    private static Reason? Run(JsonElement document, FormatSteps steps, int format, out JsonElement root)
    {
        root = document;
        try
        {
            var node = JsonNode.Parse(document.GetRawText(), documentOptions: Strict)!.AsObject();
            steps.Upgrade(node, format);
            root = JsonSerializer.SerializeToElement(node);
            return null;
        }
        catch (Exception problem) when (problem is JsonException or InvalidOperationException)
        {
            return new Reason(
                "$", "A member is written twice in one of the objects, or its name is not proper Unicode text.");
        }
    }

    /// <summary>The format's number; null where there is none, which reading tells later.</summary>
    private static int? FormatOf(JsonElement document)
    {
        if (document.ValueKind == JsonValueKind.Object)
        {
            foreach (var member in document.EnumerateObject())
            {
                if (Unicode.TryGet(member, out var name) && name == "format"
                    && member.Value.ValueKind == JsonValueKind.Number)
                {
                    return member.Value.TryGetInt32(out var whole) ? whole : null;
                }
            }
        }

        return null;
    }
}
