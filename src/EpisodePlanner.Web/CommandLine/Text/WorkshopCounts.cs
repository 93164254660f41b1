using EpisodePlanner.Planning;

namespace EpisodePlanner.Web.CommandLine.Text;

/// <summary>How much a workshop holds.</summary>
internal static class WorkshopCounts
{
    /// <summary>"5 series, 31 milestones, 48 tasks"; what there is none of is left out.</summary>
    public static string Of(Workshop workshop)
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
}
