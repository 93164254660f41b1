using System.Text;
using EpisodePlanner.Planning.Files;
using static EpisodePlanner.Planning.Tests.Sample;

namespace EpisodePlanner.Planning.Tests.Files;

public sealed class ChangeFileTests
{
    public static TheoryData<int> Seeds => [.. Enumerable.Range(0, 20)];

    [Fact]
    public void Write_IsOneLineInTheOrderOfTheForm()
    {
        var bob = new Person { Id = Id("bob"), Name = "Bob" };

        Assert.Equal(
            """{"kind":"person","id":"bob","to":{"id":"bob","name":"Bob"}}""", Text(new PersonChange(bob.Id, bob)));
        Assert.Equal("""{"kind":"slotRule","id":"fridays","remove":true}""", Text(new SlotRuleChange(Id("fridays"), null)));
        Assert.Equal(
            """{"kind":"batch","changes":[{"kind":"name","to":"Shed"},{"kind":"acceptedPlan"}]}""",
            Text(new Batch([new NameChange("Shed"), new AcceptedPlanChange(null)])));
    }

    [Fact]
    public void Write_EveryKind_ReadsBackEqual() => Assert.All(EveryKind.Of(WorkshopFile.Order(Sound)), change =>
    {
        Assert.Equal(change, ChangeFile.ReadStored(ChangeFile.Write(change)).Thing);
        if (change is not ToldDateTakenBack)
        {
            Assert.Equal(change, ChangeFile.Read(ChangeFile.Write(change)).Thing);
        }
    });

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Write_RandomChanges_ReadBackEqual(int seed)
    {
        var changes = new RandomChange(new Random(seed));
        for (var i = 0; i < 100; i++)
        {
            var change = ChangeFile.Order(changes.Next(Sound));

            Assert.Equal(change, ChangeFile.Read(ChangeFile.Write(change)).Thing);
            Assert.Equal(change, ChangeFile.ReadStored(ChangeFile.Write(change)).Thing);
        }
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Write_GeneratedThings_ReadBackEqual(int seed)
    {
        var workshop = WorkshopFile.Order(new Generator(seed) { FillsAll = seed % 4 == 0 }.Make<Workshop>());
        var all = Differences.Between(workshop with { Name = "?", Tasks = [], Series = [], Log = [], Episodes = [] }, workshop)!;

        Assert.Equal(all, ChangeFile.Read(ChangeFile.Write(all)).Thing);
        Assert.Equal(all, ChangeFile.ReadStored(ChangeFile.Write(all)).Thing);
    }

    [Fact]
    public void Read_TellsEverythingAtOnceWithItsPlace()
    {
        var reasons = Reasons(
            """
            { "kind": "batch", "changes": [
                { "kind": "task", "id": "weld frame", "to": { "name": "Weld", "kinds": "welding", "filmingMinutes": -1 } },
                { "kind": "tusk", "id": "x", "remove": true },
                null,
                7,
                { "id": "x" },
                { "kind": "person", "id": "bob" },
                { "kind": "person", "id": "bob", "to": { "name": "Bob" }, "remove": true },
                { "kind": "zone" }
            ] }
            """);

        Assert.Equal(
            [
                "$.changes[0].id",
                "$.changes[0].to.filmingMinutes",
                "$.changes[0].to.kinds",
                "$.changes[1].kind",
                "$.changes[2]",
                "$.changes[3]",
                "$.changes[4].kind",
                "$.changes[5]",
                "$.changes[6]",
                "$.changes[7].to",
            ],
            reasons.Select(reason => reason.Where).Order(StringComparer.Ordinal));
        Assert.All(reasons, reason => Assert.EndsWith(".", reason.Says.TrimEnd('?') + ".", StringComparison.Ordinal));
    }

    [Fact]
    public void Read_AThingWithoutAnId_TakesThatOfTheChange()
    {
        var read = ChangeFile.Read(Bytes.Of("""{ "kind": "person", "id": "bob", "to": { "name": "Bob" } }"""));

        Assert.Equal(new PersonChange(Id("bob"), new Person { Id = Id("bob"), Name = "Bob" }), read.Thing);
    }

    [Fact]
    public void Read_ThatAToldDateIsTakenBack_IsRefusedWhereverItStands()
    {
        var back = EveryKind.Of(Sound).OfType<ToldDateTakenBack>().Single();

        Assert.Equal(["$"], Reasons(Text(back)).Select(reason => reason.Where));
        Assert.Equal(
            ["$.changes[1]", "$.changes[2].changes[0]"],
            Reasons(Text(new Batch([new NameChange("Shed"), back, new Batch([back])]))).Select(reason => reason.Where));
    }

    [Fact]
    public void Read_TooManyChanges_IsRefused_ButWhatWasStoredIsRead()
    {
        var many = new Batch(Enumerable.Repeat<Change>(new NameChange("Shed"), ChangeFile.MostChanges + 1).ToValueList());

        Assert.Equal(["$.changes"], Reasons(Text(many)).Select(reason => reason.Where));
        Assert.Equal(many, ChangeFile.ReadStored(ChangeFile.Write(many)).Thing);
    }

    [Theory]
    [InlineData("")]
    [InlineData("{")]
    [InlineData("null")]
    [InlineData("[]")]
    [InlineData("\"name\"")]
    [InlineData("""{ "kind": "name", "kind": "zone", "to": "UTC" }""")]
    [InlineData("""{ "kind": "\ud800", "to": "UTC" }""")]
    [InlineData("""{ "kind": "batch", "changes": null }""")]
    public void Read_WhatIsNoChange_IsRefused(string text)
    {
        Assert.NotEmpty(Reasons(text));
        Assert.False(ChangeFile.ReadStored(Bytes.Of(text)).IsRead);
    }

    [Fact]
    public void WriteShort_ReadsBackEqual()
    {
        var workshop = WorkshopFile.Order(Sound);
        var bytes = WorkshopFile.WriteShort(workshop);

        Assert.Equal(workshop, WorkshopFile.Read<Workshop>(bytes).Thing);
        Assert.Equal(workshop, WorkshopFile.ReadStored<Workshop>(bytes).Thing);
        Assert.True(bytes.Length < WorkshopFile.Write(workshop).Length);
        Assert.DoesNotContain((byte)'\n', bytes);
    }

    private static string Text(Change change) => Encoding.UTF8.GetString(ChangeFile.Write(change));

    private static ValueList<Reason> Reasons(string text)
    {
        var read = ChangeFile.Read(Bytes.Of(text));
        Assert.False(read.IsRead);
        return read.Reasons;
    }
}
