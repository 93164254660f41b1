using System.Text.Json;
using System.Text.Json.Nodes;

namespace EpisodePlanner.Planning.Files;

/// <summary>Finds the format of a file and brings an older one up to the current format.</summary>
internal static class Upgrading
{
    private static readonly JsonDocumentOptions Strict = new() { AllowDuplicateProperties = false };

    /// <summary>The document in the current format, or why it can't be had.</summary>
    public static Reason? Upgrade(JsonElement document, FormatSteps steps, out JsonElement root)
    {
        root = document;
        if (document.ValueKind != JsonValueKind.Object
            || !document.TryGetProperty("format", out var number)
            || !number.TryGetWhole(out var format)
            || format == Workshop.CurrentFormat)
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
        catch (JsonException)
        {
            return new Reason("$", "A member is written twice in one of the objects; keep one of them.");
        }
    }

    private static bool TryGetWhole(this JsonElement element, out int whole)
    {
        whole = 0;
        return element.ValueKind == JsonValueKind.Number && element.TryGetInt32(out whole);
    }
}
