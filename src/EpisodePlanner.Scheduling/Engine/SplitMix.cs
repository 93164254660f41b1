namespace EpisodePlanner.Scheduling.Engine;

/// <summary>The SplitMix64 generator (Steele, Lea and Flood 2014): the same numbers from a seed on every platform.</summary>
internal sealed class SplitMix(ulong seed)
{
    private ulong state = seed;

    /// <summary>The next 64 bits.</summary>
    public ulong Next()
    {
        unchecked
        {
            state += 0x9E3779B97F4A7C15;
            var z = state;
            z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
            z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
            return z ^ (z >> 31);
        }
    }

    /// <summary>A number from 0 to below a limit.</summary>
    public int Below(int limit) => (int)Below((long)limit);

    /// <inheritdoc cref="Below(int)"/>
    public long Below(long limit) => (long)Math.BigMul(Next(), (ulong)limit, out _);
}
