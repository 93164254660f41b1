using System.Text.Json;
using EpisodePlanner.Planning.Files.Shapes;

namespace EpisodePlanner.Planning.Files;

/// <summary>Reads what was written here and kept. It was sound then; where it no longer is, it was damaged.</summary>
internal static class Kept
{
    // Parsing checks the grammar and the encoding; sizes were bounded when the thing came in.
    private static readonly JsonDocumentOptions Bounds = new() { MaxDepth = 2 * Syntax.DeepestNesting };

    /// <summary>The thing, or what is wrong with its bytes.</summary>
    public static ReadResult<T> Read<T>(ReadOnlyMemory<byte> body, Shape shape)
        where T : class
    {
        try
        {
            using var document = JsonDocument.Parse(body, Bounds);
            var reading = new Reading(isStored: true);
            var thing = (T)shape.Read(document.RootElement, reading);
            return reading.Count > 0 ? new(reading.Reasons()) : new(thing);
        }
        catch (JsonException damaged)
        {
            return new([new Reason("$", $"This is no JSON: {damaged.Message}")]);
        }
    }
}
