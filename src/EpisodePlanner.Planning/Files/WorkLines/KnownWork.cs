using EpisodePlanner.Planning.Files.Text;

namespace EpisodePlanner.Planning.Files.WorkLines;

/// <summary>The work of one series, by name and by id, as lines refer to it.</summary>
internal sealed class KnownWork(IEnumerable<WorkTask> tasks, Reading reading)
{
    private readonly List<WorkTask> tasks = [.. tasks];
    private ILookup<string, Id>? byName;
    private ILookup<string, Id>? byId;

    /// <summary>A link to each work that a line comes after; what can't be found is told at the line.</summary>
    public ValueList<TaskLink> Links(MadeLine made) => made.Line.After
        .Select(name => Find(name, made))
        .OfType<Id>()
        .Distinct()
        .Select(id => new TaskLink { Task = id })
        .ToValueList();

    private Id? Find(string name, MadeLine made)
    {
        byName ??= tasks.ToLookup(task => task.Name, task => task.Id, StringComparer.OrdinalIgnoreCase);
        byId ??= tasks.ToLookup(task => task.Id.ToString(), task => task.Id, StringComparer.Ordinal);
        var found = byId[name].Union(byName[name]).Where(id => id != made.Task.Id).ToList();
        if (found.Count == 1)
        {
            return found[0];
        }

        reading.TellUnlessDamaged(new Reason(made.Path, Problem(name, found)), standsAlone: true);
        return null;
    }

    private string Problem(string name, List<Id> found) => found.Count > 0
        ? $"'after {name}' can mean {Say.Row(found.Select(id => id.ToString()))}; write the id of the one that is meant."
        : $"'after {name}' names no other work of this series" + (reading.IsFull ? "." : Say.Proposal(name, Names()));

    private IEnumerable<string> Names() => tasks.SelectMany(task => new[] { task.Name, task.Id.ToString() });
}
