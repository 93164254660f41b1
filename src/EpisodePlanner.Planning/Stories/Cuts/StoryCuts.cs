namespace EpisodePlanner.Planning;

/// <summary>Where one series' story is cut: after which units an episode ends. The last unit always ends one.</summary>
internal sealed record StoryCuts(ValueList<bool> EndsAfter)
{
    /// <summary>The first and last unit of each episode, in order.</summary>
    public IEnumerable<(int First, int Last)> Segments()
    {
        var first = 0;
        for (var unit = 0; unit < EndsAfter.Count; unit++)
        {
            if (EndsAfter[unit])
            {
                yield return (first, unit);
                first = unit + 1;
            }
        }
    }

    /// <summary>The same with an end set or taken away.</summary>
    public StoryCuts With(int unit, bool ends) => new(EndsAfter.Select((end, i) => i == unit ? ends : end).ToValueList());
}
