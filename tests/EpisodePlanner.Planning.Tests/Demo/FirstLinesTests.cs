namespace EpisodePlanner.Planning.Tests.Demo;

public sealed class FirstLinesTests
{
    [Fact]
    public void Read_EachLineIsATaskAfterTheLineAbove()
    {
        var workshop = DemoSeed.Read("first-lines.json");

        var series = Assert.Single(workshop.Series);
        Assert.Equal(
            ["cut-tube", "weld-frame", "wire", "fit-the-winch", "first-pull"], series.Milestones.Select(m => m.Id.ToString()));
        Assert.Equal(5, workshop.Tasks.Count);
        Assert.Equal(4, workshop.Tasks.Sum(t => t.Links.Count));
        Assert.Equal(new Settings(), workshop.Settings);
    }
}
