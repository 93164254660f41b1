using System.Diagnostics.CodeAnalysis;
using System.Text.Json;

namespace EpisodePlanner.Planning.Files.Text;

/// <summary>Takes texts out of JSON, where an escaped half of a surrogate pair is grammar but not text.</summary>
internal static class Unicode
{
    /// <summary>The text of a string element, where it is proper Unicode.</summary>
    public static bool TryGet(JsonElement element, [NotNullWhen(true)] out string? text)
    {
        try
        {
            text = element.GetString();
        }
        catch (InvalidOperationException)
        {
            text = null;
        }

        return text is not null;
    }

    /// <summary>The name of a member, where it is proper Unicode.</summary>
    public static bool TryGet(JsonProperty property, [NotNullWhen(true)] out string? name)
    {
        try
        {
            name = property.Name;
        }
        catch (InvalidOperationException)
        {
            name = null;
        }

        return name is not null;
    }
}
