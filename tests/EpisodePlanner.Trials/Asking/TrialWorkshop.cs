using System.Globalization;
using System.Text.Json.Nodes;

namespace EpisodePlanner.Trials.Asking;

/// <summary>The workshop files of the trials: places whose names count, and tasks to be linked.</summary>
internal static class TrialWorkshop
{
    private const string Count = "count ";

    /// <summary>A workshop file.</summary>
    public static JsonObject File(string name, IEnumerable<string> places, IEnumerable<string> tasks) => new()
    {
        ["format"] = 1,
        ["name"] = name,
        ["zone"] = "Etc/UTC",
        ["people"] = new JsonArray(Person()),
        ["places"] = new JsonArray([.. places.Select(id => Place(id, 0))]),
        ["series"] = new JsonArray(Series()),
        ["tasks"] = new JsonArray([.. tasks.Select(id => Task(id))]),
        ["uploads"] = new JsonArray(new JsonObject { ["id"] = "first", ["series"] = "s", ["date"] = "2026-11-13" }),
    };

    /// <summary>A place whose name holds a count.</summary>
    public static JsonObject Place(string id, int count) => new()
    {
        ["id"] = id,
        ["name"] = Count + count.ToString(CultureInfo.InvariantCulture),
        ["kind"] = "bench",
    };

    /// <summary>The count that a place's name holds.</summary>
    public static int CountOf(JsonNode place) =>
        int.Parse(place["name"]!.GetValue<string>().AsSpan(Count.Length), NumberStyles.None, CultureInfo.InvariantCulture);

    private static JsonObject Task(string id) => new()
    {
        ["id"] = id,
        ["name"] = $"make {id}",
        ["milestone"] = "m",
        ["stages"] = new JsonArray(new JsonObject { ["id"] = "1", ["hours"] = 1 }),
    };

    private static JsonObject Person() => new()
    {
        ["id"] = "me",
        ["name"] = "Me",
        ["hours"] = new JsonObject
        {
            ["weekly"] = new JsonArray(
                new JsonObject { ["days"] = new JsonArray("tuesday", "thursday"), ["from"] = "19:00", ["to"] = "22:00" }),
        },
    };

    private static JsonObject Series() => new()
    {
        ["id"] = "s",
        ["name"] = "Sand Yacht",
        ["milestones"] = new JsonArray(new JsonObject { ["id"] = "m", ["name"] = "it sails" }),
    };
}
