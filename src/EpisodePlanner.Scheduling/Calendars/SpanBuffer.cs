namespace EpisodePlanner.Scheduling;

/// <summary>Collects ascending spans, joining those that touch.</summary>
internal sealed class SpanBuffer(int capacity)
{
    private readonly List<int> starts = new(capacity);
    private readonly List<int> ends = new(capacity);

    public void AddIfAny(int start, int end)
    {
        if (start < end)
        {
            AddOrJoin(start, end);
        }
    }

    public void AddOrJoin(int start, int end)
    {
        if (ends.Count > 0 && start <= ends[^1])
        {
            ends[^1] = Math.Max(ends[^1], end);
            return;
        }

        starts.Add(start);
        ends.Add(end);
    }

    public IntervalCalendar ToCalendar() => starts.Count == 0 ? IntervalCalendar.Never : new([.. starts], [.. ends]);
}
