using EpisodePlanner.Planning.Files;

namespace EpisodePlanner.Planning.Tests;

/// <summary>Lines typed into a page mean what they mean in a file.</summary>
public sealed class WrittenWorkTests
{
    private static readonly Series Cart = new() { Id = new Id("cart"), Name = "Kite Cart" };
    private static readonly Workshop Empty = new() { Format = 1, Name = "Shed", Zone = "Europe/Dublin" };

    [Fact]
    public void Understand_GivesWhatAFileWithTheseLinesGives()
    {
        string[] lines = ["cut tube, 3 h", "weld frame, 12 h", "paint, 90 min, after cut tube"];
        var file = WorkshopFile.Read("""
            { "format": 1, "name": "Shed", "zone": "Europe/Dublin",
              "series": [{ "id": "cart", "name": "Kite Cart",
                "work": ["cut tube, 3 h", "weld frame, 12 h", "paint, 90 min, after cut tube"] }] }
            """u8.ToArray()).Thing;

        var written = WrittenWork.Understand(Empty, Cart, lines);

        Assert.Equal([], written.Problems);
        Assert.Equal(file, Assert.IsType<Applied>(Changes.Apply(Empty, written.Change!)).Workshop);
    }

    [Fact]
    public void Understand_AddsToTheStoryThatIsThere()
    {
        var first = Made(Empty, Cart, "cut tube, 3 h");
        var second = Made(first, first.Series.Find(Cart.Id)!, "weld frame, 12 h, after cut tube");

        Assert.Equal(["cut tube", "weld frame"], second.Series.Find(Cart.Id)!.Milestones.Select(milestone => milestone.Name));
        var weld = Assert.Single(second.Tasks, task => task.Name == "weld frame");
        Assert.Equal(second.Tasks.Single(task => task.Name == "cut tube").Id, Assert.Single(weld.Links).Task);
    }

    [Fact]
    public void Understand_TellsEachLineThatItDoesNot()
    {
        var written = WrittenWork.Understand(Empty, Cart, ["cut tube, 3 h", "", "weld", "paint, 2 h, after nothing known"]);

        Assert.Null(written.Change);
        Assert.Equal([(3, "weld"), (4, "paint, 2 h, after nothing known")], written.Problems.Select(p => (p.Line, p.Text)));
        Assert.All(written.Problems, problem => Assert.EndsWith(".", problem.Says, StringComparison.Ordinal));
    }

    private static Workshop Made(Workshop workshop, Series series, params string[] lines) =>
        Assert.IsType<Applied>(Changes.Apply(workshop, WrittenWork.Understand(workshop, series, lines).Change!)).Workshop;
}
