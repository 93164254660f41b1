namespace EpisodePlanner.Planning;

/// <summary>Finds what was probably meant by a name that nothing has.</summary>
/// <remarks>
/// Nearness is the number of characters to insert, delete or change, case aside (V. I. Levenshtein, 1966). The effort
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

            if (isClose && Distance(wanted, name) is var distance && distance <= limit)
            {
                nearest = name;
                limit = distance - 1;
            }
        }

        return nearest;
    }

    private static int Distance(string left, string right)
    {
        var row = Enumerable.Range(0, right.Length + 1).ToArray();
        foreach (var (i, a) in left.Index())
        {
            var diagonal = row[0];
            row[0] = i + 1;
            for (var j = 0; j < right.Length; j++)
            {
                var change = diagonal + (char.ToLowerInvariant(a) == char.ToLowerInvariant(right[j]) ? 0 : 1);
                diagonal = row[j + 1];
                row[j + 1] = Math.Min(change, Math.Min(row[j], diagonal) + 1);
            }
        }

        return row[^1];
    }
}
