namespace EpisodePlanner.Checking;

/// <summary>A small seeded generator (splitmix64); the same seed gives the same throws on every machine.</summary>
public sealed class Dice(ulong seed)
{
    private ulong state = seed;

    /// <summary>A whole number from a least to a greatest, both included.</summary>
    public int Between(int least, int greatest) => least + (int)(Next() % (ulong)(greatest - least + 1));

    /// <summary>True so many times in a hundred.</summary>
    public bool Chance(int percent) => Between(1, 100) <= percent;

    /// <summary>One of some things.</summary>
    public T Pick<T>(IReadOnlyList<T> from) => from[Between(0, from.Count - 1)];

    /// <summary>The numbers from 0 to below a count in some order.</summary>
    public int[] Shuffle(int count)
    {
        var numbers = Enumerable.Range(0, count).ToArray();
        for (var i = count - 1; i > 0; i--)
        {
            var j = Between(0, i);
            (numbers[i], numbers[j]) = (numbers[j], numbers[i]);
        }

        return numbers;
    }

    private ulong Next()
    {
        unchecked
        {
            state += 0x9E3779B97F4A7C15UL;
            var mixed = state;
            mixed = (mixed ^ (mixed >> 30)) * 0xBF58476D1CE4E5B9UL;
            mixed = (mixed ^ (mixed >> 27)) * 0x94D049BB133111EBUL;
            return mixed ^ (mixed >> 31);
        }
    }
}
