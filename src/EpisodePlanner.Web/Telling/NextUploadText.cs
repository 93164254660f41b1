using EpisodePlanner.Planning;

namespace EpisodePlanner.Web.Telling;

/// <summary>The next upload, why then, and the uploads after it.</summary>
internal static class NextUploadText
{
    private const int MostSteps = 7;
    private const int MostFollowing = 6;

    public static void Write(ISheet page, Plan plan, PlanNames names, ChainText chains)
    {
        page.Heading("Next upload");
        if (plan.NextUpload is not { } next)
        {
            page.Paragraph(NoDate(plan));
            return;
        }

        page.Paragraph($"{names.Day(next.Date!.Value)}, {Words.Time(next.Publish!.Value.InZone(plan.Zone).TimeOfDay)}: {names.Full(next)}");
        chains.Write(next, MostSteps);
        WriteFollowing(page, [.. plan.Episodes.Skip(1).Where(e => e.Publish is not null)], names);
        WriteWithoutDate(page, [.. plan.Episodes.Where(e => e.Publish is null)], names);
    }

    private static string NoDate(Plan plan) => plan.Episodes.Count == 0
        ? "Nothing is left to show: no series has a milestone that is not out yet. Type a few lines of work, as in “weld frame, 12 h”."
        : "None has a date; what stands in the way is told below or on the error output.";

    private static void WriteFollowing(ISheet page, IReadOnlyCollection<PlannedEpisode> following, PlanNames names)
    {
        if (following.Count == 0)
        {
            return;
        }

        page.Heading("Then");
        foreach (var episode in following.Take(MostFollowing))
        {
            page.Item($"{names.ShortDay(episode.Date!.Value)}: {names.Full(episode)}");
        }

        if (following.Count > MostFollowing)
        {
            var last = following.Last();
            page.Item($"{following.Count - MostFollowing} more until {names.ShortDay(last.Date!.Value)}");
        }
    }

    private static void WriteWithoutDate(ISheet page, IReadOnlyCollection<PlannedEpisode> without, PlanNames names)
    {
        if (without.Count > 0)
        {
            page.Item($"Without a date: {string.Join(", ", without.Select(names.Full))}");
        }
    }
}
