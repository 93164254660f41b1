namespace EpisodePlanner.Scheduling.Networks;

/// <summary>
/// The links at each activity as compressed rows: one array of link indices sorted by activity, and one of where
/// each activity's row begins. Within a row links keep the order in which they were given.
/// </summary>
internal sealed class LinkIndex
{
    private readonly int[] _rows;
    private readonly int[] _links;

    private LinkIndex(int[] rows, int[] links) => (_rows, _links) = (rows, links);

    /// <summary>Indices of the links at an activity.</summary>
    public ReadOnlySpan<int> this[int activity] => _links.AsSpan(_rows[activity].._rows[activity + 1]);

    /// <summary>Sorts links by one of their ends, by counting.</summary>
    /// <param name="ends">For each link, the activity at that end.</param>
    /// <param name="activities">How many activities there are.</param>
    public static LinkIndex By(int[] ends, int activities)
    {
        var rows = new int[activities + 1];
        foreach (var end in ends)
            rows[end + 1]++;
        for (var activity = 0; activity < activities; activity++)
            rows[activity + 1] += rows[activity];

        int[] next = [.. rows];
        var links = new int[ends.Length];
        for (var link = 0; link < ends.Length; link++)
            links[next[ends[link]]++] = link;
        return new LinkIndex(rows, links);
    }
}
