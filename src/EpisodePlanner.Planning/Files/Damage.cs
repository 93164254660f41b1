namespace EpisodePlanner.Planning.Files;

/// <summary>
/// The values of a file that were refused. A rule that is broken there, or beside it in the same object, may be broken
/// only by the placeholder that stands in; telling it would mislead.
/// </summary>
internal sealed class Damage
{
    private readonly HashSet<string> refused = new(StringComparer.Ordinal);
    private readonly HashSet<string> shaken = new(StringComparer.Ordinal);

    /// <summary>Notes a refused value.</summary>
    /// <param name="path">The steps to it from the root.</param>
    /// <param name="alone">Whether its neighbours in the object make sense without it.</param>
    public void Add(IReadOnlyList<string> path, bool alone)
    {
        refused.Add("$" + string.Concat(path));
        if (!alone)
        {
            shaken.Add(Owner(path));
        }
    }

    /// <summary>Whether what is wrong at a place may only follow from a refused value.</summary>
    /// <param name="place">The place.</param>
    /// <param name="alone">Whether it can't follow from a neighbour in the same object, as with a reference.</param>
    public bool MayExplain(string place, bool alone) =>
        (!alone && (shaken.Contains(place) || shaken.Contains(Parent(place)))) || IsInRefused(place);

    private bool IsInRefused(string place)
    {
        while (place.Length > 1)
        {
            if (refused.Contains(place))
            {
                return true;
            }

            place = place[..place.LastIndexOfAny(['.', '['])];
        }

        return false;
    }

    /// <summary>The object that holds a value; at the root, the value itself.</summary>
    private static string Owner(IReadOnlyList<string> path)
    {
        var member = path.ToList().FindLastIndex(step => step[0] == '.');
        return "$" + string.Concat(member <= 0 ? path : path.Take(member));
    }

    private static string Parent(string place) => place[..Math.Max(1, place.LastIndexOf('.'))];
}
