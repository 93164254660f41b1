using System.Numerics;
using System.Runtime.Intrinsics;

namespace EpisodePlanner.Scheduling.Packed;

/// <summary>
/// What is free at every unit of time, a cell each: for horizons that are short beside the number of activities. Vectors
/// test sixteen units of time at once; sixty-four answers in one number are searched for a run of ones by shifting.
/// </summary>
internal struct UnitProfile : IProfile
{
    private const int Lanes = 16;
    private const int Block = 64;

    private readonly PackedDemands demands;
    private readonly int[] durations;
    private readonly uint[][] free;
    private int used;

    public UnitProfile(PackedColumns columns)
    {
        demands = columns.Demands;
        durations = [.. columns.Items.Select(item => item.Duration)];

        // A block may be read from any moment up to the horizon.
        free = [.. demands.Empty.Select(_ => new uint[columns.Horizon + (2 * Block)])];
        used = columns.Horizon + Block;
        Clear();
    }

    public void Clear()
    {
        for (var plane = 0; plane < free.Length; plane++)
        {
            free[plane].AsSpan(0, used).Fill(demands.Empty[plane]);
        }

        used = 0;
    }

    public readonly int EarliestFit(int activity, int from)
    {
        var duration = durations[activity];
        return duration <= Block / 2 ? EarliestShort(activity, duration, from) : EarliestLong(activity, duration, from);
    }

    public void Take(int activity, int start)
    {
        // Nothing can overflow: all dates lie within the horizon, and no field borrows from the next one.
        unchecked
        {
            var duration = durations[activity];
            for (var plane = 0; plane < free.Length; plane++)
            {
                Subtract(free[plane].AsSpan(start), Vector512.Create(demands.Plane(plane)[activity]), (uint)duration);
            }

            used = Math.Max(used, start + duration);
        }
    }

    private static void Subtract(Span<uint> cells, Vector512<uint> units, uint count)
    {
        unchecked
        {
            for (var at = 0; at < (int)count; at += Lanes)
            {
                var taken = Vector512.LessThan(Vector512<uint>.Indices, Vector512.Create(count - (uint)at)) & units;
                (Vector512.Create<uint>(cells[at..]) - taken).CopyTo(cells[at..]);
            }
        }
    }

    private readonly int EarliestShort(int activity, int duration, int from)
    {
        unchecked
        {
            while (true)
            {
                var run = Room(activity, from);
                for (var have = 1; have < duration;)
                {
                    var step = Math.Min(have, duration - have);
                    run &= run >> step;
                    have += step;
                }

                if (run != 0)
                {
                    return from + BitOperations.TrailingZeroCount(run);
                }

                from += Block - duration + 1;
            }
        }
    }

    private readonly int EarliestLong(int activity, int duration, int from)
    {
        unchecked
        {
            var at = from;
            while (at < from + duration)
            {
                var room = Room(activity, at);
                var open = BitOperations.TrailingZeroCount(~room);
                at += open;
                if (open < Block && at < from + duration)
                {
                    // The start must lie behind what is closed here; the zeros shifted in are not part of the block.
                    at += Math.Min(BitOperations.TrailingZeroCount(room >> open), Block - open);
                    from = at;
                }
            }

            return from;
        }
    }

    /// <summary>Bit k: whether an activity has room at unit <paramref name="from"/> + k.</summary>
    private readonly ulong Room(int activity, int from)
    {
        unchecked
        {
            var room = ulong.MaxValue;
            for (var plane = 0; plane < free.Length; plane++)
            {
                var units = Vector512.Create(demands.Plane(plane)[activity]);
                var guards = Vector512.Create(demands.Guards[plane]);
                var cells = free[plane].AsSpan(from, Block);
                var answers = 0ul;
                for (var part = 0; part < Block / Lanes; part++)
                {
                    var left = (Vector512.Create<uint>(cells[(part * Lanes)..]) - units) & guards;
                    answers |= Vector512.Equals(left, guards).ExtractMostSignificantBits() << (part * Lanes);
                }

                room &= answers;
            }

            return room;
        }
    }
}
