using System.Text.Json.Nodes;
using EpisodePlanner.Planning;
using EpisodePlanner.Planning.Files;
using EpisodePlanner.Web.Forms;
using EpisodePlanner.Web.Tests.Pictures;

namespace EpisodePlanner.Web.Tests.Forms;

public sealed class FormTests
{
    private static readonly Workshop Demo = SamplePlans.Demo.Request.Workshop;

    public static TheoryData<string> Kinds => [.. ThingKinds.All.Select(kind => kind.Name)];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Form_SentUntouched_GivesTheSameThing(string name)
    {
        var kind = ThingKinds.Find(name)!;
        Assert.NotEmpty(kind.All(Demo));
        foreach (var thing in kind.All(Demo))
        {
            var browser = new Browser(Build(Demo, kind, thing));
            var typed = new FormReader(Demo, browser.Typed).Read(FormDefinitions.Of(kind));
            var read = kind.Read(Bytes(typed), out var reasons);

            Assert.Equal([], reasons);
            Assert.Equal(thing, read);
        }
    }

    [Fact]
    public void Form_OfSettings_SentUntouched_GivesTheSameSettings()
    {
        var document = JsonNode.Parse(WorkshopFile.Write(Demo.Settings))!.AsObject();
        var browser = new Browser(new FormBuilder(Demo, []).Build("settings", document));
        var typed = new FormReader(Demo, browser.Typed).Read("settings");

        Assert.Equal(Demo.Settings, WorkshopFile.Read<Settings>(Bytes(typed)).Thing);
    }

    [Fact]
    public void Form_TellsWhatIsWrongAtItsField()
    {
        var task = Demo.Tasks.First(t => t.Stages.Count > 1);
        var browser = new Browser(Build(Demo, ThingKinds.Tasks, task));
        browser.Type("name", "");
        browser.Type("stages[1].hours", "a while");
        var typed = new FormReader(Demo, browser.Typed).Read("workTask");
        Assert.Null(ThingKinds.Tasks.Read(Bytes(typed), out var reasons));

        var builder = new FormBuilder(Demo, reasons);
        var form = builder.Build("workTask", typed);

        var wrong = form.WithAllInside().Where(field => field.Problems.Count > 0).Select(field => field.Name);
        Assert.Equal(["name", "stages[1].hours"], wrong);
        Assert.Equal("a while", form.WithAllInside().OfType<TextField>().Single(f => f.Name == "stages[1].hours").Value);
        Assert.Empty(builder.Elsewhere(form));
    }

    [Fact]
    public void Form_KeepsWhatBelongsToNoField()
    {
        var builder = new FormBuilder(Demo, [new Reason("$", "Something is wrong.")]);
        var form = builder.Build("person", []);

        Assert.Equal(["Something is wrong."], builder.Elsewhere(form));
    }

    [Theory]
    [InlineData("1.5", 1.5)]
    [InlineData("1,5", 1.5)]
    [InlineData(" 12 ", 12)]
    public void Reader_TakesNumbersAsTheyAreTyped(string text, double hours)
    {
        var typed = new FormReader(Demo, name => name switch
        {
            "stages.count" => ["1"],
            "stages[0].hours" => [text],
            _ => [],
        }).Read("workTask");

        Assert.Equal((decimal)hours, (decimal)typed["stages"]![0]!["hours"]!);
    }

    [Fact]
    public void Lists_AddRemoveAndMove()
    {
        var document = JsonNode.Parse("""{ "stages": [{ "id": "a" }, { "id": "b" }] }""")!.AsObject();

        FormLists.Add(document, "stages");
        FormLists.MoveUp(document, "stages[1]");
        FormLists.Remove(document, "stages[2]");
        FormLists.Add(document, "hours.weekly");
        FormLists.Add(document, "stages[0].needs");

        Assert.Equal(
            """{"stages":[{"id":"b","needs":[{}]},{"id":"a"}],"hours":{"weekly":[{}]}}""",
            document.ToJsonString());
    }

    [Theory]
    [InlineData("stages[9]")]
    [InlineData("nothing[0]")]
    [InlineData("stages")]
    [InlineData("")]
    [InlineData("stages[0][0][0]")]
    public void Lists_LeaveAloneWhatIsNotThere(string item)
    {
        var document = JsonNode.Parse("""{ "stages": [{ "id": "a" }] }""")!.AsObject();

        FormLists.Remove(document, item);
        FormLists.MoveUp(document, item);

        Assert.Equal("""{"stages":[{"id":"a"}]}""", document.ToJsonString());
    }

    private static GroupField Build(Workshop workshop, ThingKind kind, IThing thing) =>
        new FormBuilder(workshop, []).Build(FormDefinitions.Of(kind), JsonNode.Parse(kind.Write(thing))!.AsObject());

    private static byte[] Bytes(JsonObject document) => System.Text.Encoding.UTF8.GetBytes(document.ToJsonString());
}
