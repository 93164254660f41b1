using System.Text.RegularExpressions;
using EpisodePlanner.Planning.Files;

namespace EpisodePlanner.Planning.Tests.Files;

public sealed partial class FormatPageTests
{
    private static string Page => Repository.File("demo-seed/FORMAT.md");

    [Fact]
    public void TheLeastExample_IsRead()
    {
        var example = Example().Match(File.ReadAllText(Page)).Groups["json"].Value;

        var workshop = Bytes.Whole(example);

        Assert.Equal(4, workshop.Tasks.Count);
    }

    [Fact]
    public void TheTables_AreThoseOfTheSchema()
    {
        var text = File.ReadAllText(Page);
        var end = Mark().Match(text) is { Success: true } mark ? mark.Index + mark.Length : text.Length;
        var expected = text[..end] + MemberTables.Of(WorkshopSchema.Write());

        if (Repository.IsUpdating)
        {
            File.WriteAllText(Page, expected);
        }

        Assert.Equal(expected, File.ReadAllText(Page));
    }

    [GeneratedRegex("```json\n(?<json>.*?)```", RegexOptions.Singleline)]
    private static partial Regex Example();

    [GeneratedRegex("<!-- members:[^\n]*-->\n")]
    private static partial Regex Mark();
}
