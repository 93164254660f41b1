using EpisodePlanner.Planning.Files.Text;
using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Planning.Files.WorkLines;

/// <summary>The lines of work of one series.</summary>
internal sealed class SeriesLines(
    Series series, Keyed<WorkTask> tasks, WorkNames names, Reading reading, Origins origins)
{
    private readonly List<(string Name, Id Id)> known = [.. tasks
        .Where(task => task.Series == series.Id || series.Milestones.Any(milestone => milestone.Id == task.Milestone))
        .Select(task => (task.Name, task.Id))];

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

        known.AddRange(made.Select(line => (line.Task.Name, line.Task.Id)));
        return [.. made.Select((line, i) => line with { Task = line.Task with { Links = Links(line, i > 0 ? made[i - 1] : null) } })];
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

    private ValueList<TaskLink> Links(MadeLine made, MadeLine? above)
    {
        if (made.Line.After.Count == 0)
        {
            return above is null ? [] : [new TaskLink { Task = above.Task.Id, Assumed = true }];
        }

        return made.Line.After
            .Select(name => Find(name, made))
            .OfType<Id>()
            .Distinct()
            .Select(id => new TaskLink { Task = id })
            .ToValueList();
    }

    private Id? Find(string name, MadeLine made)
    {
        var found = known
            .Where(task => task.Id != made.Task.Id && (task.Id.ToString() == name || task.Name.Equals(name, StringComparison.OrdinalIgnoreCase)))
            .Select(task => task.Id)
            .ToList();
        if (found.Count != 1)
        {
            reading.TellUnlessDamaged(new Reason(made.Path, Problem(name, found)), standsAlone: true);
        }

        return found.Count == 1 ? found[0] : null;
    }

    private string Problem(string name, List<Id> found) => found.Count > 0
        ? $"'after {name}' can mean {Say.Row(found.Select(id => id.ToString()))}; write the id of the one that is meant."
        : $"'after {name}' names no other work of this series"
            + Say.Proposal(name, known.SelectMany(task => new[] { task.Name, task.Id.ToString() }));
}
