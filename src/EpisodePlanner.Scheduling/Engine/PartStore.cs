namespace EpisodePlanner.Scheduling.Engine;

/// <summary>The parts of the stages placed so far, chained per stage in the order in which they were added.</summary>
internal sealed class PartStore(int stages)
{
    private const int None = -1;

    private readonly List<(SchedulePart Part, int Next)> parts = [];
    private readonly int[] firsts = NewColumn(stages);
    private readonly int[] lasts = NewColumn(stages);

    public void Clear()
    {
        parts.Clear();
        firsts.AsSpan().Fill(None);
        lasts.AsSpan().Fill(None);
    }

    public void Add(int stage, ReadOnlySpan<SchedulePart> added)
    {
        foreach (var part in added)
        {
            var at = parts.Count;
            parts.Add((part, None));
            if (lasts[stage] == None)
            {
                firsts[stage] = at;
            }
            else
            {
                parts[lasts[stage]] = (parts[lasts[stage]].Part, at);
            }

            lasts[stage] = at;
        }
    }

    /// <summary>The last part of a stage that has one.</summary>
    public SchedulePart Last(int stage) => parts[lasts[stage]].Part;

    /// <summary>Where the parts of each finished stage begin, one more entry for the end, and all parts by stage.</summary>
    public (int[] First, SchedulePart[] Parts) ToColumns(ReadOnlySpan<int> finishes)
    {
        var first = new int[firsts.Length + 1];
        var columns = new List<SchedulePart>(parts.Count);
        for (var stage = 0; stage < firsts.Length; stage++)
        {
            for (var at = finishes[stage] < 0 ? None : firsts[stage]; at != None; at = parts[at].Next)
            {
                columns.Add(parts[at].Part);
            }

            first[stage + 1] = columns.Count;
        }

        return (first, [.. columns]);
    }

    private static int[] NewColumn(int size)
    {
        var column = new int[size];
        column.AsSpan().Fill(None);
        return column;
    }
}
