using EpisodePlanner.Web.Pictures;

namespace EpisodePlanner.Web.Tests.Pictures;

/// <summary>The inks can be read and told apart: WCAG 2.2 contrast, and CIEDE2000 under simulated sights.</summary>
public sealed class InkTests
{
    /// <summary>Below about 10 two colours are easily taken for each other; common practice, no source.</summary>
    private const double ClearlyApart = 20;

    public static TheoryData<PictureTheme> Themes => [PictureTheme.Light, PictureTheme.Dark];

    public static TheoryData<PictureTheme, string> ThemesAndSights =>
        [.. from theme in Enum.GetValues<PictureTheme>() from sight in Colour.Sights.Keys select (theme, sight)];

    [Fact] // Published: Sharma, Wu and Dalal 2005, table 1, pairs 1, 7, 17 and 25.
    public void Ciede2000_GivesThePublishedDifferences()
    {
        Assert.Equal(2.0425, Ciede2000.Between((50, 2.6772, -79.7751), (50, 0, -82.7485)), 4);
        Assert.Equal(0, Ciede2000.Between((50, 0, 0), (50, 0, 0)), 4);
        Assert.Equal(27.1492, Ciede2000.Between((50, 2.5, 0), (73, 25, -18)), 4);
        Assert.Equal(1.2644, Ciede2000.Between((60.2574, -34.0099, 36.2677), (60.4626, -34.1751, 39.4387)), 4);
    }

    [Fact] // Published: WCAG 2.2, definition of contrast ratio: black on white is 21 to 1.
    public void Contrast_OfBlackOnWhiteIs21() => Assert.Equal(21, Colour.Contrast(Colour.Of("#000000"), Colour.Of("#ffffff")), 6);

    [Theory] // Published: WCAG 2.2, 1.4.3 (text 4.5 to 1) and 1.4.11 (parts of graphics 3 to 1).
    [MemberData(nameof(Themes))]
    public void Inks_CanBeRead(PictureTheme theme)
    {
        var ink = Ink.Of(theme);
        foreach (var ground in new[] { ink.Paper, ink.Sheet, ink.Closed })
        {
            Assert.All([ink.Words, ink.Soft, ink.Over, ink.Hands], words => AssertContrast(4.5, words, ground));
            AssertContrast(3, ink.Run, ground);
        }

        AssertContrast(4.5, ink.OnHands, ink.Hands);
    }

    [Theory]
    [MemberData(nameof(ThemesAndSights))]
    public void Inks_CanBeToldApart(PictureTheme theme, string sight)
    {
        var ink = Ink.Of(theme);
        var seen = new[] { ink.Hands, ink.Run, ink.Over, ink.Sheet }
            .Select(hex => Colour.Of(hex).SeenBy(Colour.Sights[sight]).Lab())
            .ToArray();
        for (var i = 0; i < seen.Length; i++)
        {
            Assert.All(seen[..i], other => Assert.True(
                Ciede2000.Between(seen[i], other) >= ClearlyApart, $"{i}: {Ciede2000.Between(seen[i], other):0.0}"));
        }
    }

    private static void AssertContrast(double least, string words, string ground)
    {
        var contrast = Colour.Contrast(Colour.Of(words), Colour.Of(ground));
        Assert.True(contrast >= least, $"{words} on {ground}: {contrast:0.00} to 1, {least} needed");
    }
}
