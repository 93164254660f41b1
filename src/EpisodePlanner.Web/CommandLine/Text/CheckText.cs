using EpisodePlanner.Planning;

namespace EpisodePlanner.Web.CommandLine.Text;

/// <summary>What a sound file holds.</summary>
internal static class CheckText
{
    public static void Write(string file, Plan plan, TextPage page)
    {
        var workshop = plan.Request.Workshop;
        page.Heading($"{file} is sound.");
        page.Paragraph($"{workshop.Name}: {Counts(workshop)}.");
        var tasks = plan.Stages.Where(stage => !stage.Key.IsTail).Select(stage => stage.Key.Task).Distinct().Count();
        page.Paragraph($"{Count(tasks, "task")} left to do, {Count(plan.Episodes.Count, "episode")} to come; everything can be done as things stand.");
        foreach (var finding in plan.Findings.Where(finding => finding.Kind == FindingKind.NoEffect))
        {
            page.Item(finding.Says);
        }
    }

    private static string Counts(Workshop workshop)
    {
        (int Count, string One, string Many)[] counts =
        [
            (workshop.Series.Count, "series", "series"),
            (workshop.Series.Sum(s => s.Milestones.Count), "milestone", "milestones"),
            (workshop.Tasks.Count, "task", "tasks"),
            (workshop.Tasks.Sum(t => t.Stages.Count), "stage", "stages"),
            (workshop.Tasks.Sum(t => t.Links.Count), "link", "links"),
            (workshop.Tasks.Sum(t => t.Shots.Count), "shot", "shots"),
            (workshop.Episodes.Count, "episode", "episodes"),
            (workshop.People.Count, "person", "people"),
            (workshop.Machines.Count, "machine", "machines"),
            (workshop.Places.Count, "place", "places"),
            (workshop.SlotRules.Count, "slot rule", "slot rules"),
            (workshop.Uploads.Count, "upload", "uploads"),
            (workshop.Log.Count, "log entry", "log entries"),
        ];
        return string.Join(", ", counts.Where(c => c.Count > 0).Select(c => $"{c.Count} {(c.Count == 1 ? c.One : c.Many)}"));
    }

    private static string Count(int count, string what) => count == 1 ? $"1 {what}" : $"{count} {what}s";
}
