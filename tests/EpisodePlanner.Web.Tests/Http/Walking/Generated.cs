using System.Globalization;
using System.Text.Json.Nodes;

namespace EpisodePlanner.Web.Tests.Http.Walking;

/// <summary>
/// Makes bodies from the schemas of a description: every member that is described, with values within its bounds. What
/// a schema can't say stands in two tables: what references lead to, and members that another member rules out.
/// </summary>
internal sealed class Generated(ApiDescription description, int seed)
{
    /// <summary>Things of the example workshop, and values whose order or grammar spans members.</summary>
    private static readonly Dictionary<string, string> Given = new()
    {
        ["base"] = "1",
        ["series"] = "\"rail-trolley\"",
        ["slotRule.series"] = "[\"rail-trolley\"]",
        ["workTask.milestone"] = "\"it-rolls\"",
        ["episode.milestones"] = "[\"it-rolls\"]",
        ["task"] = "\"weld-frame\"",
        ["logEntry.stage"] = "\"1\"",
        ["acceptedStart.stage"] = "\"1\"",
        ["needs"] = "[[\"anna\"], [\"bench\"]]",
        ["station"] = "\"anna\"",
        ["machine.kind"] = "\"printer\"",
        ["machine.place"] = "\"bench\"",
        ["booking.place"] = "\"track\"",
        ["desk"] = "\"desk\"",
        ["episode"] = "\"trolley-e1\"",
        ["zone"] = "\"Europe/Oslo\"",
        ["slotRule.at"] = "\"18:00\"",
        ["rule"] = "\"FREQ=WEEKLY;BYDAY=TU\"",
        ["promise"] = "{ \"uploadsPerMonth\": 2 }",
        ["lowHours"] = "1",
        ["stage.hours"] = "2",
        ["tailPart.hours"] = "2",
        ["highHours"] = "900",
        ["least"] = "5",
        ["most"] = "25",
        ["low"] = "1",
        ["likely"] = "2",
        ["high"] = "3",
        ["weeklyHours.from"] = "\"09:00\"",
        ["weeklyHours.to"] = "\"17:00\"",
        ["busyTime.from"] = "\"2026-12-01T10:00\"",
        ["busyTime.to"] = "\"2026-12-01T12:00\"",
        ["booking.from"] = "\"2027-03-06T10:00\"",
        ["booking.to"] = "\"2027-03-06T16:00\"",
        ["nextWindow"] = "\"2027-04-03T10:00\"",
        ["cancelBy"] = "\"2027-02-20\"",
        ["timedLine.from"] = "\"2026-11-30\"",
        ["timedLine.until"] = "\"2026-12-30\"",
        ["dueBy"] = "\"2026-12-20\"",
        ["upload.date"] = "\"2026-11-20\"",
        ["toldDate.date"] = "\"2026-12-24\"",
        ["toldOn"] = "\"2026-11-24\"",
        ["logEntry.at"] = "\"2026-11-24T20:00:00Z\"",
        ["outcome"] = "\"partly\"",
        ["datedHours.kind"] = "\"closed\"",
    };

    /// <summary>Members that another member makes wrong: a series is active, a stage attended, work that of a task.</summary>
    private static readonly HashSet<string> LeftOut =
    [
        "series.state", "series.restingUntil", "series.work", "workTask.series", "workTask.links",
        "stage.kind", "stage.businessDays", "stage.loadMinutes", "stage.unloadMinutes", "stage.lookAt", "stage.failureChance",
        "stage.mayComeLater", "stage.unbroken", "datedHours.through", "datedHours.from", "datedHours.to", "logEntry.episode",
        "logEntry.part", "acceptedStart.episode", "acceptedStart.part", "episode.pinnedSlot", "place.daylightOnly",
        "place.fitDayChance", "upload.episode", "taskLink.atMostMinutes", "workshop.demo", "shot.lostBy", "slotRule.except",
        "episode.tells", "acceptedStart.shot",
    ];

    private static readonly HashSet<string> NotAskedFor = ["toldDateTakenBack", "batch"];

    private readonly Random dice = new(seed);
    private int next;

    /// <summary>A body of a schema.</summary>
    public JsonNode Of(string schema) => schema == "change" ? Changes()[0]!.DeepClone() : Members(schema, description.Schemas[schema]!.AsObject());

    private JsonObject Members(string name, JsonObject schema)
    {
        var made = new JsonObject();
        foreach (var (member, says) in schema["properties"]!.AsObject())
        {
            var full = $"{name}.{member}";
            if (!LeftOut.Contains(full))
            {
                made[member] = member == "id" ? Fresh() : Value(full, member, says!.AsObject());
            }
        }

        return made;
    }

    private JsonNode Value(string full, string member, JsonObject says)
    {
        if (Given.TryGetValue(full, out var given) || Given.TryGetValue(member, out given))
        {
            return JsonNode.Parse(given)!;
        }

        var name = says["$ref"]?.GetValue<string>().Split('/')[^1];
        return name is not null ? Of(name) : says["type"]!.GetValue<string>() switch
        {
            "string" => Text(says),
            "boolean" => dice.Next(2) == 0,
            "array" => member == "changes" ? Changes() : new JsonArray(Value(full, "", says["items"]!.AsObject())),
            _ => Number(says),
        };
    }

    private string Text(JsonObject says) =>
        says["oneOf"]?.AsArray() is { } words ? words[dice.Next(words.Count)]!["const"]!.GetValue<string>()
        : says["format"]?.GetValue<string>() switch
        {
            "date" => $"2026-12-{dice.Next(10, 28)}",
            "date-time" => $"2026-11-25T18:{dice.Next(10, 60)}:00Z",
            _ => Fresh(),
        };

    private JsonValue Number(JsonObject says)
    {
        var least = says["minimum"]!.GetValue<decimal>();
        var most = Math.Min(says["maximum"]!.GetValue<decimal>(), least + 40);
        var number = least + dice.Next((int)Math.Floor(most - least) + 1);
        return JsonValue.Create(says["type"]!.GetValue<string>() == "integer" ? Math.Ceiling(number) : number);
    }

    /// <summary>A change of every kind that can be asked for.</summary>
    private JsonArray Changes() =>
    [
        .. description.Schemas["change"]!["discriminator"]!["mapping"]!.AsObject()
            .Where(kind => !NotAskedFor.Contains(kind.Key))
            .Select(kind => Change(kind.Key, description.Resolve(new JsonObject { ["$ref"] = kind.Value!.GetValue<string>() }))),
    ];

    private JsonObject Change(string kind, JsonObject schema)
    {
        var to = Value("", kind == "zone" ? "zone" : "to", schema["properties"]!["to"]!.AsObject());
        var change = new JsonObject { ["kind"] = kind, ["to"] = to };
        if (schema["properties"]!["id"] is not null)
        {
            change["id"] = to["id"]!.DeepClone();
        }

        return change;
    }

    private string Fresh() => string.Create(CultureInfo.InvariantCulture, $"made-{seed}-{++next}");
}
