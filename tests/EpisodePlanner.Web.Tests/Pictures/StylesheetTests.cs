using System.Reflection;
using EpisodePlanner.Web.Pictures;
using EpisodePlanner.Web.Tests.CommandLine;

namespace EpisodePlanner.Web.Tests.Pictures;

/// <summary>The stylesheet of the pages and the code of the pictures say the same.</summary>
public sealed class StylesheetTests
{
    private static readonly string Sheet =
        File.ReadAllText(Path.Combine(Papers.Root, "src", "EpisodePlanner.Web", "wwwroot", "desk.css"));

    [Fact]
    public void Stylesheet_HasTheRulesOfPictures()
    {
        var rules = string.Join('\n', PictureStyle.Rules.Split('\n').Select(rule => rule.Trim()));

        Assert.Contains(rules, Sheet, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(PictureTheme.Light, 0)]
    [InlineData(PictureTheme.Dark, 1)]
    public void Stylesheet_HasTheInksOfBothThemes(PictureTheme theme, int occurrence)
    {
        foreach (var ink in typeof(Ink).GetProperties(BindingFlags.Public | BindingFlags.Instance))
        {
            var name = string.Concat(ink.Name.Select((c, i) => char.IsUpper(c) && i > 0 ? $"-{char.ToLowerInvariant(c)}" : $"{char.ToLowerInvariant(c)}"));
            var values = System.Text.RegularExpressions.Regex.Matches(Sheet, $"--ink-{name}: (#[0-9a-f]{{6}});");

            Assert.Equal(ink.GetValue(Ink.Of(theme)), values[occurrence].Groups[1].Value);
        }
    }
}
