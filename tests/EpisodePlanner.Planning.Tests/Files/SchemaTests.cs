using System.Text.Json;
using System.Text.Json.Nodes;
using EpisodePlanner.Planning.Files;
using Json.Schema;

namespace EpisodePlanner.Planning.Tests.Files;

/// <summary>Oracle: JsonSchema.Net, an independent implementation of JSON Schema 2020-12.</summary>
public sealed class SchemaTests
{
    private static readonly JsonSchema Schema = JsonSchema.FromText(WorkshopSchema.Write());
    private static readonly EvaluationOptions Options = new() { RequireFormatValidation = true };

    public static TheoryData<int> Seeds => [.. Enumerable.Range(0, 60)];

    [Fact]
    public void Write_IsTheCommittedSchema()
    {
        var path = Repository.File("demo-seed/workshop.schema.json");
        if (Repository.IsUpdating)
        {
            File.WriteAllText(path, WorkshopSchema.Write());
        }

        Assert.Equal(File.ReadAllText(path), WorkshopSchema.Write());
    }

    [Fact]
    public void Write_DescribesEveryMember()
    {
        using var schema = JsonDocument.Parse(WorkshopSchema.Write());
        var members = schema.RootElement.GetProperty("$defs").EnumerateObject()
            .SelectMany(record => record.Value.GetProperty("properties").EnumerateObject());

        Assert.All(members, member => Assert.True(member.Value.TryGetProperty("description", out _), member.Name));
    }

    [Fact]
    public void Parts_DescribeChangesAsTheyAreWritten()
    {
        var parts = WorkshopSchema.Parts("#/$defs/", []);
        parts["change"]!.AsObject().Remove("discriminator"); // OpenAPI's own keyword
        var schema = JsonSchema.FromText(new JsonObject { ["$ref"] = "#/$defs/change", ["$defs"] = parts }.ToJsonString());
        var batch = new Batch([
            .. Differences.Between(Sample.Sound with { Tasks = [], Zone = "UTC" }, Sample.Sound)!.Changes,
            new TaskChange(new Id("weld"), null),
        ]);

        Assert.True(IsValid(schema, ChangeFile.Write(batch)));
        Assert.False(IsValid(schema, Bytes.Of("""{ "kind": "task", "id": "weld" }""")));
        Assert.False(IsValid(schema, Bytes.Of("""{ "kind": "tusk", "id": "weld", "remove": true }""")));
    }

    [Fact]
    public void TheSample_IsValid() => Assert.True(IsValid(Samples.Whole));

    [Theory]
    [MemberData(nameof(Seeds))]
    public void WhatIsWritten_IsValid(int seed) =>
        Assert.True(IsValid(WorkshopFile.Write(new Generator(seed) { FillsAll = seed % 4 == 0 }.Make<Workshop>())));

    [Theory]
    [MemberData(nameof(Seeds))]
    public void AWrongMember_IsRefusedByBoth(int seed)
    {
        var root = JsonNode.Parse(Samples.Whole)!;
        Spoil(root, new Random(seed));
        var bytes = Bytes.Of(root.ToJsonString());

        Assert.False(IsValid(bytes), root.ToJsonString());
        Assert.False(WorkshopFile.Read(bytes).IsRead, root.ToJsonString());
    }

    private static bool IsValid(byte[] bytes) => IsValid(Schema, bytes);

    private static bool IsValid(JsonSchema schema, byte[] bytes)
    {
        using var document = JsonDocument.Parse(bytes);
        return schema.Evaluate(document.RootElement, Options).IsValid;
    }

    private static void Spoil(JsonNode root, Random random)
    {
        var objects = Objects(root).ToList();
        var victim = objects[random.Next(objects.Count)];
        if (random.Next(4) == 0 || victim.Count == 0)
        {
            victim["unheardOf"] = 1;
            return;
        }

        var name = victim.ElementAt(random.Next(victim.Count)).Key;
        victim[name] = Wrong(victim[name]!, random);
    }

    private static JsonNode? Wrong(JsonNode value, Random random) => (value.GetValueKind(), random.Next(3)) switch
    {
        (_, 0) => null,
        (JsonValueKind.Number, 1) => "1",
        (JsonValueKind.Number, _) => -1e9,
        (JsonValueKind.String, 1) => "\u0001",
        (JsonValueKind.String, _) => 5,
        (JsonValueKind.Array, 1) => new JsonArray(new JsonArray(new JsonArray())),
        (JsonValueKind.Array, _) => new JsonObject(),
        (JsonValueKind.Object, _) => new JsonArray(),
        _ => "true",
    };

    private static IEnumerable<JsonObject> Objects(JsonNode? node) => node switch
    {
        JsonObject members => members.SelectMany(member => Objects(member.Value)).Prepend(members),
        JsonArray items => items.SelectMany(Objects),
        _ => [],
    };
}
