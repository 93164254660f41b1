using EpisodePlanner.Planning.Files;

namespace EpisodePlanner.Planning.Tests.Files;

public sealed class FormatStepTests
{
    private static readonly FormatSteps FromZero = new([new FormatStep(0, root =>
    {
        root["name"] = root["title"]!.DeepClone();
        root.Remove("title");
    })]);

    [Fact]
    public void Read_AnOlderFormat_IsBroughtUpToDate()
    {
        var read = WorkshopFile.Read(Bytes.Of("""{ "format": 0, "title": "Shed", "zone": "Europe/Dublin" }"""), FromZero);

        Assert.Empty(read.Reasons);
        Assert.Equal((1, "Shed"), (read.Thing!.Format, read.Thing.Name));
    }

    [Theory]
    [InlineData(-1)]
    [InlineData(2)]
    public void Read_AnUnknownFormat_TellsWhichAreKnown(int format)
    {
        var reason = Assert.Single(WorkshopFile.Read(Bytes.Of($$"""{ "format": {{format}} }"""), FromZero).Reasons);

        Assert.Equal(new Reason("$.format", $"{format} is a format that this planner does not know; 0 and 1 can be read."), reason);
    }

    [Fact]
    public void Read_AnOlderFormatWithAMemberTwice_IsRefused()
    {
        var read = WorkshopFile.Read(Bytes.Of("""{ "format": 0, "title": "a", "title": "b", "zone": "Europe/Dublin" }"""), FromZero);

        Assert.Contains("written twice", Assert.Single(read.Reasons).Says, StringComparison.Ordinal);
    }

    [Fact]
    public void New_StepsWithAGap_AreRefused() =>
        Assert.Throws<ArgumentException>(() => new FormatSteps([new FormatStep(-1, _ => { }), new FormatStep(-1, _ => { })]));
}
