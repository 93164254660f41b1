namespace EpisodePlanner.Planning.Files.Text;

/// <summary>Finds the word that was probably meant.</summary>
internal static class Typos
{
    private const int LongestWord = 64;

    /// <summary>The known word nearest to a mistyped one, or null where none is near.</summary>
    public static string? Nearest(string typed, IEnumerable<string> known)
    {
        if (typed.Length is 0 or > LongestWord)
        {
            return null;
        }

        var furthest = Math.Max(1, typed.Length / 3);
        return known
            .Where(word => Math.Abs(word.Length - typed.Length) <= furthest)
            .Select(word => (Word: word, Distance: Distance(typed.ToUpperInvariant(), word.ToUpperInvariant())))
            .Where(near => near.Distance <= furthest)
            .OrderBy(near => near.Distance)
            .ThenBy(near => near.Word, StringComparer.Ordinal)
            .Select(near => near.Word)
            .FirstOrDefault();
    }

    /// <summary>Letters to insert, delete, replace or swap with a neighbour (optimal string alignment).</summary>
    private static int Distance(string left, string right)
    {
        var rows = new int[left.Length + 1, right.Length + 1];
        for (var i = 0; i <= left.Length; i++)
        {
            for (var j = 0; j <= right.Length; j++)
            {
                rows[i, j] = i == 0 || j == 0 ? i + j : Step(rows, left, right, i, j);
            }
        }

        return rows[left.Length, right.Length];
    }

    private static int Step(int[,] rows, string left, string right, int i, int j)
    {
        var replaced = rows[i - 1, j - 1] + (left[i - 1] == right[j - 1] ? 0 : 1);
        var least = Math.Min(replaced, Math.Min(rows[i - 1, j], rows[i, j - 1]) + 1);
        var swapped = i > 1 && j > 1 && left[i - 1] == right[j - 2] && left[i - 2] == right[j - 1];
        return swapped ? Math.Min(least, rows[i - 2, j - 2] + 1) : least;
    }
}
