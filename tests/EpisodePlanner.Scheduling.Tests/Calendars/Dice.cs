namespace EpisodePlanner.Scheduling.Tests;

/// <summary>A seeded generator (SplitMix64), so that a failing case can be repeated from its seed.</summary>
internal sealed class Dice(int seed)
{
    private ulong state = (ulong)(uint)seed;

    /// <summary>A number from a least to a most value, both included.</summary>
    public int Between(int least, int most) => least + (int)(Next() % (ulong)(most - least + 1));

    private ulong Next()
    {
        unchecked
        {
            state += 0x9E3779B97F4A7C15;
            var mixed = (state ^ (state >> 30)) * 0xBF58476D1CE4E5B9;
            mixed = (mixed ^ (mixed >> 27)) * 0x94D049BB133111EB;
            return mixed ^ (mixed >> 31);
        }
    }
}
