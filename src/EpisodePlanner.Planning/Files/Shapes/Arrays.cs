using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using System.Text.Json.Nodes;
using EpisodePlanner.Planning.Files.Text;

namespace EpisodePlanner.Planning.Files.Shapes;

/// <summary>What all arrays of a file share.</summary>
internal static class Arrays
{
    /// <summary>The elements in the order of the file, placeholders for those that can't be read.</summary>
    public static bool TryRead<T>(JsonElement json, Shape element, Reading reading, [NotNullWhen(true)] out T[]? items)
    {
        items = null;
        if (json.ValueKind != JsonValueKind.Array)
        {
            reading.RefuseKind(json, "an array in [ ]");
            return false;
        }

        items = new T[json.GetArrayLength()];
        var index = 0;
        foreach (var item in json.EnumerateArray())
        {
            reading.Enter(index);
            items[index++] = (T)element.Read(item, reading);
            reading.Leave();
        }

        return true;
    }

    /// <summary>Refuses each id that an earlier thing of the array has already.</summary>
    public static void RefuseRepeatedIds<T>(T[] items, Reading reading)
    {
        if (!typeof(IThing).IsAssignableFrom(typeof(T)))
        {
            return;
        }

        var seen = new Dictionary<Id, int>();
        for (var i = 0; i < items.Length; i++)
        {
            var id = ((IThing)items[i]!).Id;
            if (!id.IsEmpty && !seen.TryAdd(id, i))
            {
                reading.Enter(i);
                reading.Refuse("id", $"'{id}' is already the id of element {seen[id]} of this array; ids must differ.");
                reading.Leave();
            }
        }
    }

    /// <summary>The sentence about an array with too few or too many elements.</summary>
    public static string CountProblem(int count, int least, int most) => count < least
        ? $"This array is too short; it needs at least {Say.Number(least)}."
        : $"This array has {Say.Number(count)} elements; at most {Say.Number(most)} are possible.";

    /// <summary>The schema of an array.</summary>
    public static JsonObject Describe(JsonObject items, int least, int most)
    {
        var schema = new JsonObject { ["type"] = "array", ["items"] = items };
        if (least > 0)
        {
            schema["minItems"] = least;
        }

        if (most < int.MaxValue)
        {
            schema["maxItems"] = most;
        }

        return schema;
    }
}
