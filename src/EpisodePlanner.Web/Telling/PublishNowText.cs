using EpisodePlanner.Planning;

namespace EpisodePlanner.Web.Telling;

/// <summary>"Could I publish now?", for a terminal.</summary>
internal static class PublishNowText
{
    /// <summary>Every series that is told now.</summary>
    public static void Write(ISheet page, IReadOnlyList<PublishNow> answers)
    {
        page.Heading("Could I publish now?");
        if (answers.Count == 0)
        {
            page.Paragraph("No series is being told now.");
        }

        foreach (var about in answers)
        {
            var told = new PublishNowWords(about);
            page.Item($"{about.Series.Name}: {told.Reaches}");
            page.Below($"{told.Done} {told.Filmed}");
            page.Below($"{told.Then}{(told.Costs is { } costs ? $" {costs}" : " The plan has it so already.")}");
        }
    }
}
