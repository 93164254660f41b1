namespace EpisodePlanner.Planning;

/// <summary>What the channel's silences weigh between two uploads of one series, while the other series' uploads stand.</summary>
internal sealed class ChannelGaps
{
    private readonly int longest;
    private readonly int[] others;
    private readonly long[] before;

    /// <summary>Prepares for a series.</summary>
    /// <param name="longest">The channel's longest silence, days.</param>
    /// <param name="others">The days on which other series are out, in any order.</param>
    public ChannelGaps(int longest, IEnumerable<int> others)
    {
        this.longest = longest;
        this.others = [.. others.Order()];
        before = new long[this.others.Length];
        for (var i = 1; i < before.Length; i++)
        {
            before[i] = before[i - 1] + SilencePenalty.Weight(this.others[i] - this.others[i - 1] - longest);
        }
    }

    /// <summary>The weight of the channel's gaps from one day to a later one, both taken as uploads.</summary>
    public long Between(int from, int to)
    {
        var first = FirstAfter(from);
        var last = FirstAfter(to) - 1;
        return first > last
            ? SilencePenalty.Weight(to - from - longest)
            : SilencePenalty.Weight(others[first] - from - longest)
                + before[last] - before[first]
                + SilencePenalty.Weight(to - others[last] - longest);
    }

    /// <summary>The weight of the channel's gaps after a day on which something is out, up to the last upload of the others.</summary>
    public long After(int day)
    {
        var first = FirstAfter(day);
        return first == others.Length ? 0 : SilencePenalty.Weight(others[first] - day - longest) + before[^1] - before[first];
    }

    private int FirstAfter(int day)
    {
        var (low, high) = (0, others.Length);
        while (low < high)
        {
            var middle = (low + high) / 2;
            (low, high) = others[middle] > day ? (low, middle) : (middle + 1, high);
        }

        return low;
    }
}
