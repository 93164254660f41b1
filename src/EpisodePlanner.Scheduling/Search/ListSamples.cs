using EpisodePlanner.Scheduling.Engine;
using EpisodePlanner.Scheduling.Lists;

namespace EpisodePlanner.Scheduling;

/// <summary>Draws lists near the rule of least time: every item goes some places earlier or later.</summary>
internal sealed class ListSamples
{
    /// <summary>By at most this part of the whole list.</summary>
    private const int Part = 10;

    private readonly SplitMix dice;
    private readonly int[] places;

    public ListSamples(int[] keys, SplitMix dice)
    {
        this.dice = dice;
        var order = new int[keys.Length];
        new KeySorter(keys.Length).Sort(keys, order);
        places = new int[keys.Length];
        for (var place = 0; place < order.Length; place++)
        {
            places[order[place]] = place;
        }
    }

    /// <summary>Writes the keys of a list.</summary>
    public void Draw(Span<int> keys)
    {
        var reach = Math.Max(4, places.Length / Part);
        for (var i = 0; i < keys.Length; i++)
        {
            keys[i] = places[i] + dice.Below(reach);
        }
    }
}
