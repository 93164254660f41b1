using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using EpisodePlanner.Planning.Files;

namespace EpisodePlanner.Planning.Tests.Files;

public sealed class RoundTripTests
{
    public static TheoryData<int> Seeds => [.. Enumerable.Range(0, 100)];

    [Fact]
    public void Write_WhatWasRead_IsByteIdentical()
    {
        var read = WorkshopFile.Read(Samples.Whole);

        Assert.Empty(read.Reasons);
        Assert.Equal(Encoding.UTF8.GetString(Samples.Whole), Encoding.UTF8.GetString(WorkshopFile.Write(read.Thing!)));
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Write_AGeneratedWorkshop_ComesBackByteIdentical(int seed)
    {
        var bytes = WorkshopFile.Write(new Generator(seed) { FillsAll = seed % 4 == 0 }.Make<Workshop>());

        var read = WorkshopFile.Read<Workshop>(bytes);

        Assert.Empty(read.Reasons);
        Assert.Equal(Encoding.UTF8.GetString(bytes), Encoding.UTF8.GetString(WorkshopFile.Write(read.Thing!)));
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Read_WhatWasWritten_IsEqual(int seed)
    {
        var workshop = WorkshopFile.Order(new Generator(seed).Make<Workshop>());

        Assert.Equal(workshop, WorkshopFile.Read<Workshop>(WorkshopFile.Write(workshop)).Thing);
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Write_ListsWithoutOrderShuffled_GivesTheSameBytes(int seed)
    {
        var workshop = new Generator(seed) { FillsAll = seed % 4 == 0 }.Make<Workshop>();

        Assert.Equal(WorkshopFile.Write(workshop), WorkshopFile.Write(new Shuffling(seed).Shuffle(workshop)));
    }

    [Fact]
    public void Read_SetsOfThingsShuffled_GivesTheSameBytes()
    {
        var random = new Random(7);
        var root = JsonNode.Parse(Samples.Whole)!.AsObject();
        foreach (var (name, array) in root.Where(member => member.Value is JsonArray).ToList())
        {
            var items = array!.AsArray().Select(item => item!.DeepClone()).ToArray();
            random.Shuffle(items);
            root[name] = new JsonArray(items);
        }

        Assert.Equal(Samples.Whole, WorkshopFile.Write(Bytes.Whole(root.ToJsonString())));
    }

    [Fact]
    public void Read_MembersInAnyOrder_GivesTheSameBytes()
    {
        Assert.Equal(Samples.Whole, WorkshopFile.Write(Bytes.Whole(Reversed(JsonNode.Parse(Samples.Whole)!).ToJsonString())));
    }

    [Fact]
    public void Write_OneThing_ComesBack()
    {
        var task = Bytes.Whole(Encoding.UTF8.GetString(Samples.Whole)).Tasks.Find(new Id("weld"))!;

        var bytes = WorkshopFile.Write(task);

        Assert.Equal(task, WorkshopFile.Read<WorkTask>(bytes).Thing);
        Assert.StartsWith("{\n  \"id\": \"weld\",\n", Encoding.UTF8.GetString(bytes), StringComparison.Ordinal);
    }

    [Fact]
    public void Write_TheSample_HasEveryMemberOfTheSchema()
    {
        using var schema = JsonDocument.Parse(WorkshopSchema.Write());
        var text = Encoding.UTF8.GetString(Samples.Whole);
        var members = schema.RootElement.GetProperty("$defs").EnumerateObject()
            .SelectMany(record => record.Value.GetProperty("properties").EnumerateObject())
            .Select(member => member.Name)
            .Where(name => name != "work");

        Assert.All(members, name => Assert.Contains($"\"{name}\":", text, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("1.50", "1.5")]
    [InlineData("100", "100")]
    [InlineData("1e2", "100")]
    [InlineData("12.0", "12")]
    [InlineData("0.000001", "0.000001")]
    [InlineData("-0", "0")]
    [InlineData("1.25e-1", "0.125")]
    public void Write_ANumber_IsShortest(string typed, string written)
    {
        var read = WorkshopFile.Read<Stage>(Bytes.Of($$"""{ "id": "1", "hours": {{typed}} }"""));

        Assert.Contains($"\"hours\": {written}\n", Encoding.UTF8.GetString(WorkshopFile.Write(read.Thing!)), StringComparison.Ordinal);
    }

    private static JsonNode Reversed(JsonNode node) => node switch
    {
        JsonObject members => new JsonObject(members.Reverse().Select(member => KeyValuePair.Create(member.Key, (JsonNode?)Reversed(member.Value!)))),
        JsonArray items => new JsonArray([.. items.Select(item => Reversed(item!))]),
        _ => node.DeepClone(),
    };
}
