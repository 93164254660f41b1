using System.Xml.Linq;
using EpisodePlanner.Planning;
using EpisodePlanner.Web.Pictures;

namespace EpisodePlanner.Web.Tests.Pictures;

/// <summary>What holds of every picture.</summary>
public sealed class PictureTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    public static TheoryData<string> Names => [.. Pictures.Keys];

    private static IReadOnlyDictionary<string, Func<Plan, Picture>> Pictures { get; } = new Dictionary<string, Func<Plan, Picture>>
    {
        ["bench, desk"] = plan => BenchPicture.Draw(plan, BenchView.FromNow(plan, 28, BenchView.Desk), "p", _ => "/somewhere"),
        ["bench, phone"] = plan => BenchPicture.Draw(plan, BenchView.FromNow(plan, 7, BenchView.Phone), "p", _ => null),
        ["silence"] = plan => SilencePicture.Draw(plan, SilenceView.Around(plan, 26, 1_120), "p"),
        ["story"] = plan => StoryPicture.Draw(plan, plan.Request.Workshop.Series.First(), "p"),
    };

    [Theory]
    [MemberData(nameof(Names))]
    public void Picture_IsNamedAndDescribed(string name)
    {
        var picture = Pictures[name](SamplePlans.Demo);
        var root = XElement.Parse(picture.Inline());

        Assert.Equal(picture.Title, root.Element(Svg + "title")!.Value);
        Assert.Equal(picture.Description, root.Element(Svg + "desc")!.Value);
        Assert.Equal(
            $"{root.Element(Svg + "title")!.Attribute("id")!.Value} {root.Element(Svg + "desc")!.Attribute("id")!.Value}",
            root.Attribute("aria-labelledby")!.Value);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Picture_StaysInsideItsFrame(string name)
    {
        var picture = Pictures[name](SamplePlans.Demo);
        foreach (var shape in picture.Root.Descendants(Svg + "rect").Where(shape => shape.Parent!.Name != Svg + "pattern"))
        {
            Assert.InRange(Number(shape, "x") + Number(shape, "width"), 0, picture.Width + 0.5);
            Assert.InRange(Number(shape, "y") + Number(shape, "height"), 0, picture.Height + 0.5);
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Picture_RefersOnlyToWhatIsInIt(string name)
    {
        var root = Pictures[name](SamplePlans.Demo).Root;
        var ids = root.DescendantsAndSelf().Attributes("id").Select(id => id.Value).ToList();

        Assert.Equal(ids.Count, ids.Distinct().Count());
        Assert.All(
            root.Descendants().Attributes("fill").Select(fill => fill.Value).Where(fill => fill.StartsWith("url(", StringComparison.Ordinal)),
            fill => Assert.Contains(fill[5..^1], ids));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Picture_EveryClassHasItsRule(string name)
    {
        var classes = Pictures[name](SamplePlans.Demo).Root.Descendants().Attributes("class")
            .SelectMany(style => style.Value.Split(' ')).Distinct();

        Assert.All(classes, style => Assert.Contains($".{style}", PictureStyle.Rules, StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Standalone_CarriesItsInksAndItsSize(string name)
    {
        var picture = Pictures[name](SamplePlans.Demo);
        var root = XElement.Parse(picture.Standalone(PictureTheme.Dark, 1_920));

        Assert.Contains(Ink.Dark.Words, root.Element(Svg + "style")!.Value, StringComparison.Ordinal);
        Assert.Equal("1920", root.Attribute("width")!.Value);
    }

    private static double Number(XElement shape, string name) =>
        double.Parse(shape.Attribute(name)?.Value ?? "0", System.Globalization.CultureInfo.InvariantCulture);
}
