namespace EpisodePlanner.Planning;

/// <summary>Finds what was probably meant by a name that nothing has.</summary>
/// <remarks>
/// Nearness is the number of letters to insert, delete, change or swap, case aside (optimal string alignment). The effort
/// over the life of one instance is bounded, so that a file with thousands of wrong names is still answered at once.
/// </remarks>
internal sealed class Nearest
{
    private int effortLeft = 20_000_000;

    /// <summary>The nearest of the known names, the first of equals; null where none is near.</summary>
    public string? To(string wanted, IEnumerable<string> known)
    {
        var limit = Math.Max(1, wanted.Length / 3);
        string? nearest = null;
        foreach (var name in known)
        {
            var isClose = Math.Abs(name.Length - wanted.Length) <= limit;
            effortLeft = Math.Max(0, effortLeft - (isClose ? name.Length * wanted.Length : 1));
            if (effortLeft == 0)
            {
                return nearest;
            }

            if (isClose && Distance(wanted.ToUpperInvariant(), name.ToUpperInvariant()) is var distance && distance <= limit)
            {
                nearest = name;
                limit = distance - 1;
            }
        }

        return nearest;
    }

    /// <summary>Letters to insert, delete, replace or swap with a neighbour.</summary>
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
