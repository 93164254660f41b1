using EpisodePlanner.Planning.Files.Text;
using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Planning.Files.WorkLines;

/// <summary>The lines of work of one series.</summary>
internal sealed class SeriesLines(
    Series series, IEnumerable<WorkTask> tasks, WorkNames names, Reading reading, Origins origins)
{
    /// <summary>What the lines became, in their order.</summary>
    public List<MadeLine> Expand(List<Machine> printers)
    {
        var made = new List<MadeLine>();
        for (var i = 0; i < series.Work.Count; i++)
        {
            var (line, problem) = WorkLineParser.Parse(series.Work[i]);
            if (line is null)
            {
                reading.TellUnlessDamaged(new Reason(origins.LinePath(series, i), problem!), standsAlone: true);
            }
            else
            {
                made.Add(Make(line, origins.LinePath(series, i), printers));
            }
        }

        var known = new KnownWork(tasks.Concat(made.Select(line => line.Task)), reading);
        return [.. made.Select((line, i) => Linked(line, i > 0 ? made[i - 1] : null, known))];
    }

    private MadeLine Make(WorkLine line, string path, List<Machine> printers)
    {
        var slug = Slug.Of(line.Name) is { Length: > 0 } found ? found : "work";
        var milestone = new Milestone { Id = names.Milestones.Next(slug), Name = line.Name };
        var task = new WorkTask
        {
            Id = names.Tasks.Next(slug),
            Name = line.Name,
            Kind = line.Kind,
            Milestone = milestone.Id,
            Stages = [StageOf(line, printers)],
        };
        origins.Add(task, milestone, path);
        return new MadeLine(line, path, milestone, task);
    }

    private static Stage StageOf(WorkLine line, List<Machine> printers)
    {
        var stage = new Stage { Id = new Id("1"), Hours = line.Hours };
        return line.Kind == WorkKind.Print && printers is [var printer]
            ? stage with { Kind = StageKind.Run, Needs = [[printer.Id]] }
            : stage;
    }

    private static MadeLine Linked(MadeLine made, MadeLine? above, KnownWork known)
    {
        var links = made.Line.After.Count > 0 ? known.Links(made)
            : above is null ? []
            : [new TaskLink { Task = above.Task.Id, Assumed = true }];
        return made with { Task = made.Task with { Links = links } };
    }
}
