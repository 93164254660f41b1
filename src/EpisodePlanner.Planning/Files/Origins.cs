using System.Collections;
using System.Globalization;
using System.Text.RegularExpressions;
using EpisodePlanner.Planning.Files.Shapes;

namespace EpisodePlanner.Planning.Files;

/// <summary>Where in the file the parts of a freshly read workshop stand: turns paths by id into paths by position.</summary>
internal sealed partial class Origins(Reading reading)
{
    private readonly Dictionary<Id, string> tasksOfLines = [];
    private readonly Dictionary<Id, string> milestonesOfLines = [];

    /// <summary>Notes that a task and its milestone were made from a line of work.</summary>
    public void Add(WorkTask task, Milestone milestone, string line)
    {
        tasksOfLines.Add(task.Id, line);
        milestonesOfLines.Add(milestone.Id, line);
    }

    /// <summary>The path of a line of work.</summary>
    public string LinePath(Series series, int line) =>
        $"$.series{Index(reading.Positions.GetValueOrDefault(("series", series.Id)))}.work{Index(line)}";

    /// <summary>A path such as <c>$.tasks['weld'].links[0]</c> as the file has it: <c>$.tasks[3].links[0]</c>.</summary>
    /// <param name="workshop">The workshop as it was read, its lists in the order of the file.</param>
    /// <param name="where">The path by ids.</param>
    /// <param name="at">What stands there, where anything does.</param>
    public string InFile(Workshop workshop, string where, out object? at)
    {
        var (path, member) = ("$", "");
        at = workshop;
        foreach (Match step in Steps().Matches(where))
        {
            var (text, next) = Follow(at, member, step);
            if (LineOf(next) is { } line)
            {
                return line;
            }

            (path, member, at) = (path + text, step.Groups["member"].Value, next);
        }

        return path;
    }

    private (string Text, object? Next) Follow(object? at, string array, Match step)
    {
        if (step.Groups["member"].Success)
        {
            return (step.Value, Part(at, step.Groups["member"].Value));
        }

        var items = at is IEnumerable list and not string ? list.Cast<object>().ToList() : [];
        var index = step.Groups["index"].Success
            ? int.Parse(step.Groups["index"].Value, CultureInfo.InvariantCulture)
            : items.FindIndex(item => item is IThing thing && thing.Id.ToString() == step.Groups["id"].Value);
        return index >= 0 && index < items.Count
            ? (Index(PositionOf(items[index], array, index)), items[index])
            : (step.Value, null);
    }

    private int PositionOf(object item, string array, int index) =>
        item is IThing thing ? reading.Positions.GetValueOrDefault((array, thing.Id), index) : index;

    private string? LineOf(object? at) => at switch
    {
        WorkTask task => tasksOfLines.GetValueOrDefault(task.Id),
        Milestone milestone => milestonesOfLines.GetValueOrDefault(milestone.Id),
        _ => null,
    };

    private static object? Part(object? owner, string member) =>
        owner is null || owner is IEnumerable || ShapeFactory.Record(owner.GetType()) is not IRecordShape shape
            ? null
            : shape.Members.FirstOrDefault(part => part.Name == member)?.Get(owner);

    private static string Index(int index) => $"[{index.ToString(CultureInfo.InvariantCulture)}]";

    [GeneratedRegex(@"\.(?<member>[A-Za-z]+)|\['(?<id>[^']*)'\]|\[(?<index>[0-9]{1,9})\]")]
    private static partial Regex Steps();
}
