using EpisodePlanner.Data;
using EpisodePlanner.Planning;
using EpisodePlanner.Web.Features.Plans;

namespace EpisodePlanner.Web.Features.Home;

/// <summary>Says of every workshop what comes next.</summary>
internal sealed class HomeDesk(WorkshopStore store, PlanDesk plans)
{
    /// <summary>For more than these no plan is made to show a list.</summary>
    private const int MostPlanned = 12;

    /// <summary>The workshops, by name.</summary>
    public async Task<ValueList<HomeLine>> Lines(CancellationToken stop)
    {
        var lines = new List<HomeLine>();
        foreach (var line in await store.List(stop))
        {
            var next = lines.Count < MostPlanned ? await Next(line.Id, stop) : "";
            lines.Add(new HomeLine(line.Id, line.Name, next));
        }

        return lines.ToValueList();
    }

    private async Task<string> Next(Id workshop, CancellationToken stop)
    {
        if ((await store.Find(workshop, stop)).Found is not { } now)
        {
            return "It was deleted this moment.";
        }

        if (now.Workshop.Series.Count == 0 && now.Workshop.Tasks.Count == 0)
        {
            return "Nothing to plan yet: it has no series and no work.";
        }

        var plan = (await plans.Current(now, PlanKey.UsualSchedules, stop)).Plan;
        return plan.NextUpload is { Publish: { } publish } next
            ? $"Next upload {Words.Day(publish.InZone(plan.Zone).Date)}, {Words.Time(publish.InZone(plan.Zone).TimeOfDay)}: “{next.Title}”"
            : "No upload has a date yet.";
    }
}
