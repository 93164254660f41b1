using System.Numerics;

namespace EpisodePlanner.Scheduling.Packed;

/// <summary>
/// Units of several stations side by side in one number: each station has a field as wide as its capacity needs, with a
/// guard bit above it. With the guards set in what is free, one subtraction and one test tell whether all stations of a
/// plane have room: a guard that is gone was borrowed from.
/// </summary>
/// <remarks>
/// No borrow leaves its field: guard + free − demand is at least 1, since a demand is at most the capacity and that is
/// below the guard. The technique is that of Lamport, "Multiple byte processing with full-word instructions", CACM 18
/// (1975). Stations that do not fit 32 bits together stand in further planes.
/// </remarks>
internal sealed class PackedDemands
{
    private readonly uint[][] byPlane;

    private PackedDemands(uint[][] byPlane, uint[] empty, uint[] guards)
    {
        this.byPlane = byPlane;
        Empty = empty;
        Guards = guards;
    }

    /// <summary>How many planes there are, at least 1.</summary>
    public int Planes => Guards.Length;

    /// <summary>By plane: all capacity free, guards set.</summary>
    public uint[] Empty { get; }

    /// <summary>By plane: the guard bits.</summary>
    public uint[] Guards { get; }

    /// <summary>What each activity takes in a plane.</summary>
    public uint[] Plane(int plane) => byPlane[plane];

    /// <summary>Whether an activity takes anything.</summary>
    public bool TakesAny(int activity) => byPlane.Any(plane => plane[activity] != 0);

    /// <summary>The demands of a problem, its activities in some order.</summary>
    public static PackedDemands Of(PackedProblem problem, int[] order)
    {
        var (planeOf, shiftOf, planes) = Layout(problem);
        var byPlane = Enumerable.Range(0, planes).Select(_ => new uint[order.Length]).ToArray();
        var (empty, guards) = (new uint[planes], new uint[planes]);
        for (var station = 0; station < problem.Stations.Length; station++)
        {
            var (plane, shift, capacity) = (planeOf[station], shiftOf[station], (uint)problem.Stations[station].Capacity);
            var guard = 1u << (shift + Width(capacity) - 1);
            guards[plane] |= guard;
            empty[plane] |= guard | (capacity << shift);
            for (var place = 0; place < order.Length; place++)
            {
                byPlane[plane][place] |= (uint)problem.Demands[order[place]][station] << shift;
            }
        }

        return new PackedDemands(byPlane, empty, guards);
    }

    /// <summary>Bits of a field with its guard: at most 32, since a capacity has at most 31.</summary>
    private static int Width(uint capacity) => 33 - BitOperations.LeadingZeroCount(capacity);

    private static (int[] PlaneOf, int[] ShiftOf, int Planes) Layout(PackedProblem problem)
    {
        var (planeOf, shiftOf) = (new int[problem.Stations.Length], new int[problem.Stations.Length]);
        var (plane, used) = (0, 0);
        for (var station = 0; station < problem.Stations.Length; station++)
        {
            var width = Width((uint)problem.Stations[station].Capacity);
            if (used + width > 32)
            {
                (plane, used) = (plane + 1, 0);
            }

            (planeOf[station], shiftOf[station]) = (plane, used);
            used += width;
        }

        return (planeOf, shiftOf, plane + 1);
    }
}
