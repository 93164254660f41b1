namespace EpisodePlanner.Scheduling.Packed;

/// <summary>
/// What is free between the moments at which something starts or finishes: for horizons that are long beside the number
/// of activities.
/// </summary>
internal struct EventProfile : IProfile
{
    private readonly PackedDemands demands;
    private readonly int[] durations;

    // free[plane][k] holds from moments[k] until moments[k + 1], the last one for good; there everything is free.
    private readonly int[] moments;
    private readonly uint[][] free;
    private int count;

    public EventProfile(PackedColumns columns)
    {
        demands = columns.Demands;
        durations = [.. columns.Items.Select(item => item.Duration)];
        var most = (2 * columns.Count) + 1;
        moments = new int[most];
        free = [.. demands.Empty.Select(_ => new uint[most])];
        Clear();
    }

    public void Clear()
    {
        moments[0] = 0;
        count = 1;
        for (var plane = 0; plane < free.Length; plane++)
        {
            free[plane][0] = demands.Empty[plane];
        }
    }

    public readonly int EarliestFit(int activity, int from)
    {
        var start = from;
        for (var k = Last(from); k < count && moments[k] < start + durations[activity]; k++)
        {
            if (!HasRoom(activity, k))
            {
                // There is a next moment: after the last one everything is free.
                start = moments[k + 1];
            }
        }

        return start;
    }

    public void Take(int activity, int start)
    {
        var first = Split(start);
        var end = Split(start + durations[activity]);
        for (var plane = 0; plane < free.Length; plane++)
        {
            var units = demands.Plane(plane)[activity];
            foreach (ref var cell in free[plane].AsSpan(first, end - first))
            {
                cell -= units;
            }
        }
    }

    /// <summary>The last moment that is not after a time.</summary>
    private readonly int Last(int time)
    {
        var at = moments.AsSpan(0, count).BinarySearch(time);
        return at >= 0 ? at : ~at - 1;
    }

    private readonly bool HasRoom(int activity, int k)
    {
        unchecked
        {
            // A field never borrows from the next one, see PackedDemands.
            for (var plane = 0; plane < free.Length; plane++)
            {
                if (((free[plane][k] - demands.Plane(plane)[activity]) & demands.Guards[plane]) != demands.Guards[plane])
                {
                    return false;
                }
            }

            return true;
        }
    }

    /// <summary>Makes a time a moment of its own and gives its place.</summary>
    private int Split(int time)
    {
        var at = Last(time);
        if (moments[at] == time)
        {
            return at;
        }

        Array.Copy(moments, at + 1, moments, at + 2, count - at - 1);
        moments[at + 1] = time;
        foreach (var plane in free)
        {
            Array.Copy(plane, at, plane, at + 1, count - at);
        }

        count++;
        return at + 1;
    }
}
