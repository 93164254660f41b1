using System.Text;
using EpisodePlanner.Web.Composition;

namespace EpisodePlanner.Web.CommandLine.Text;

/// <summary>The settings of the server as plain text.</summary>
internal static class SettingsText
{
    private const int Indent = 4;

    /// <summary>A paragraph for each setting: its name, what it means, and what holds where it is not set.</summary>
    public static string Write()
    {
        var text = new StringBuilder();
        foreach (var setting in SettingsTable.All)
        {
            text.Append("  ").Append(setting.Name).Append('\n');
            foreach (var line in TextPage.Wrap(Plain($"{setting.Meaning}. Default: {setting.Default}."), TextPage.Width - Indent - 2))
            {
                text.Append(' ', Indent).Append(line).Append('\n');
            }
        }

        return text.ToString();
    }

    private static string Plain(string markdown) => markdown.Replace("`", "", StringComparison.Ordinal);
}
