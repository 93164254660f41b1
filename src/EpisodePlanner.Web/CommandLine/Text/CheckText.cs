using EpisodePlanner.Planning;

namespace EpisodePlanner.Web.CommandLine.Text;

/// <summary>What a sound file holds.</summary>
internal static class CheckText
{
    public static void Write(string file, Plan plan, TextPage page)
    {
        var workshop = plan.Request.Workshop;
        page.Heading($"{file} is sound.");
        page.Paragraph($"{workshop.Name}: {WorkshopCounts.Of(workshop)}.");
        var tasks = plan.Stages.Where(stage => stage.Key.IsTask).Select(stage => stage.Key.Task).Distinct().Count();
        page.Paragraph($"{Count(tasks, "task")} left to do, {Count(plan.Episodes.Count, "episode")} to come; everything can be done as things stand.");
        foreach (var finding in plan.Findings.Where(finding => finding.Kind == FindingKind.NoEffect))
        {
            page.Item(finding.Says);
        }
    }

    private static string Count(int count, string what) => count == 1 ? $"1 {what}" : $"{count} {what}s";
}
