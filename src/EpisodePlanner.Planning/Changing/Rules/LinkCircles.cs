namespace EpisodePlanner.Planning;

/// <summary>
/// Finds circles of tasks that wait for each other, in O(tasks + links) and without recursion. Circles that are found
/// share no task; without their tasks the rest can be put in order.
/// </summary>
internal sealed class LinkCircles
{
    private const int MostNamed = 20;

    private readonly Inspection inspection;
    private readonly List<WorkTask> path = [];
    private readonly Stack<int> nextLink = new();
    private readonly Dictionary<Id, int> placeOnPath = [];
    private readonly HashSet<Id> done = [];

    private LinkCircles(Inspection inspection) => this.inspection = inspection;

    public static void Check(Inspection inspection)
    {
        var circles = new LinkCircles(inspection);
        foreach (var task in inspection.Workshop.Tasks)
        {
            circles.WalkFrom(task);
        }
    }

    private void WalkFrom(WorkTask root)
    {
        Enter(root);
        while (path.Count > 0)
        {
            var task = path[^1];
            var link = nextLink.Pop();
            if (link == task.Links.Count)
            {
                Leave();
                continue;
            }

            nextLink.Push(link + 1);
            if (inspection.Workshop.Tasks.TryFind(task.Links[link].Task, out var awaited))
            {
                Follow(awaited);
            }
        }
    }

    private void Follow(WorkTask awaited)
    {
        if (!placeOnPath.TryGetValue(awaited.Id, out var start))
        {
            Enter(awaited);
            return;
        }

        Refuse(path[start..]);
        while (path.Count > start)
        {
            nextLink.Pop();
            Leave();
        }
    }

    private void Enter(WorkTask task)
    {
        if (!done.Contains(task.Id))
        {
            placeOnPath.Add(task.Id, path.Count);
            path.Add(task);
            nextLink.Push(0);
        }
    }

    private void Leave()
    {
        var task = path[^1];
        path.RemoveAt(path.Count - 1);
        placeOnPath.Remove(task.Id);
        done.Add(task.Id);
    }

    private void Refuse(List<WorkTask> circle)
    {
        var start = circle.IndexOf(circle.MinBy(task => task.Id)!);
        List<WorkTask> inOrder = [.. circle[start..], .. circle[..start]];
        var awaited = inOrder[1 % inOrder.Count].Id;
        var link = inOrder[0].Links.Index().First(l => l.Item.Task == awaited).Index;
        inspection.Refuse(ThingKinds.Tasks.At(inOrder[0].Id).Member("links").Item(link).Member("task"), Say(inOrder));
    }

    private static string Say(List<WorkTask> circle)
    {
        if (circle.Count == 1)
        {
            return $"'{circle[0].Name}' waits for itself; remove this link.";
        }

        var named = circle.Take(MostNamed).Select(task => Name(task, circle)).ToList();
        if (circle.Count > MostNamed)
        {
            named.Add($"{circle.Count - MostNamed} others in turn");
        }

        var rest = string.Join(", which waits for ", [.. named[1..], named[0]]);
        return $"{named[0]} waits for {rest}: a circle that can never begin; remove one of these links.";
    }

    private static string Name(WorkTask task, List<WorkTask> circle) =>
        circle.Count(other => other.Name == task.Name) == 1 ? $"'{task.Name}'" : $"'{task.Name}' ({task.Id})";
}
