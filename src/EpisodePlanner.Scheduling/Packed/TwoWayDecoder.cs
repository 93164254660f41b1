using EpisodePlanner.Scheduling.Lists;

namespace EpisodePlanner.Scheduling.Packed;

/// <summary>
/// Serial generation in both directions. Backward it works on the mirrored problem, so a schedule is pushed as far to
/// the right as its end allows; its order of starts, decoded forward, pushes it to the left again. That is double
/// justification: the end never grows, since each activity may at least keep its place.
/// </summary>
/// <remarks>V. Valls, F. Ballestín and S. Quintanilla, "Justification and RCPSP", EJOR 165 (2005).</remarks>
internal sealed class TwoWayDecoder
{
    private readonly ListDecoder forward;
    private readonly ListDecoder mirrored;
    private readonly KeySorter sorter;
    private readonly int[] keys;
    private readonly int[] order;
    private readonly int[] anyFinish;

    public TwoWayDecoder(PackedColumns columns, PackedColumns mirror)
    {
        forward = ListDecoder.For(columns);
        mirrored = ListDecoder.For(mirror);
        sorter = new KeySorter(columns.Count);
        keys = new int[columns.Count];
        order = new int[columns.Count];
        anyFinish = new int[columns.Count];
        anyFinish.AsSpan().Fill(int.MaxValue);
    }

    /// <summary>When activities start in the last forward schedule.</summary>
    public ReadOnlySpan<int> Starts => forward.Starts;

    /// <summary>When they finish in it.</summary>
    public ReadOnlySpan<int> Finishes => forward.Finishes.AsSpan(0, keys.Length);

    /// <summary>The end of the last forward schedule.</summary>
    public int End => forward.End;

    /// <summary>The end of the last backward schedule, measured from its start.</summary>
    public int BackwardEnd => mirrored.End;

    /// <summary>A number that tells the backward list prepared last from others.</summary>
    public ulong BackwardListMark => Marks.Of(order);

    /// <summary>A number that tells the last backward schedule from others.</summary>
    public ulong BackwardMark => Marks.Of(mirrored.Starts);

    /// <summary>A number that tells the last forward schedule from others.</summary>
    public ulong ForwardMark => Marks.Of(forward.Starts);

    /// <summary>Decodes forward in ascending order of keys; false where an activity finishes after its latest.</summary>
    /// <param name="byKey">By activity; no less than the keys of what it waits for.</param>
    /// <param name="latest">By activity: the latest finish of interest.</param>
    public bool TryForward(ReadOnlySpan<int> byKey, ReadOnlySpan<int> latest)
    {
        sorter.Sort(byKey, order);
        return forward.TryDecode(order, latest);
    }

    /// <summary>Decodes a list forward; false where an activity finishes after its latest.</summary>
    public bool TryForwardList(ReadOnlySpan<int> list, ReadOnlySpan<int> latest) => forward.TryDecode(list, latest);

    /// <summary>Makes the backward list: in descending order of keys.</summary>
    /// <param name="byKey">By activity; no less than the keys of what it waits for.</param>
    public void PrepareBackward(ReadOnlySpan<int> byKey)
    {
        for (var i = 0; i < keys.Length; i++)
        {
            keys[keys.Length - 1 - i] = -byKey[i];
        }

        sorter.Sort(keys, order);
    }

    /// <summary>Decodes the backward list prepared last.</summary>
    public void Backward() => mirrored.TryDecode(order, anyFinish);

    /// <summary>Decodes forward in the order of the starts of the last backward schedule.</summary>
    public bool TryForwardAgain(ReadOnlySpan<int> latest)
    {
        for (var i = 0; i < keys.Length; i++)
        {
            keys[i] = -mirrored.Finishes[keys.Length - 1 - i];
        }

        return TryForward(keys, latest);
    }
}
