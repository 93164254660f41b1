namespace EpisodePlanner.Scheduling.Tests;

/// <summary>A calendar told minute by minute: slow, and too simple to be wrong.</summary>
internal sealed class MinuteOracle
{
    public const int Length = 120;

    private readonly bool[] open = new bool[Length];

    private MinuteOracle(bool[] open) => this.open = open;

    public static MinuteOracle Of(IEnumerable<MinuteSpan> spans)
    {
        var open = new bool[Length];
        foreach (var span in spans)
        {
            Array.Fill(open, true, span.Start, span.Length);
        }

        return new MinuteOracle(open);
    }

    public MinuteOracle Combine(MinuteOracle other, Func<bool, bool, bool> rule) =>
        new([.. open.Zip(other.open, rule)]);

    public bool IsOpen(int minute) => minute is >= 0 and < Length && open[minute];

    public int? NextOpen(int minute)
    {
        for (var m = Math.Max(minute, 0); m < Length; m++)
        {
            if (open[m])
            {
                return m;
            }
        }

        return null;
    }

    public int WorkBefore(int minute) => open.Take(Math.Max(minute, 0)).Count(isOpen => isOpen);

    /// <summary>Works through open minutes, one at a time.</summary>
    public int? Finish(int start, int work)
    {
        var left = work;
        var at = start;
        for (; left > 0 && at < Length; at++)
        {
            left -= IsOpen(at) ? 1 : 0;
        }

        return left == 0 ? at : null;
    }

    /// <summary>The latest of all starts that are done in time.</summary>
    public int? LatestStart(int finish, int work)
    {
        for (var start = finish; start >= 0; start--)
        {
            if (Finish(start, work) is { } end && end <= finish)
            {
                return start;
            }
        }

        return null;
    }
}
