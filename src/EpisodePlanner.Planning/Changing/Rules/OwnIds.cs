namespace EpisodePlanner.Planning;

/// <summary>The things in one list have different ids.</summary>
internal static class OwnIds
{
    public static void Check(Inspection inspection, IEnumerable<Id> ids, string word, Spot at)
    {
        var seen = new HashSet<Id>();
        foreach (var (i, id) in ids.Index())
        {
            inspection.RefuseIf(
                !seen.Add(id),
                at.Item(i).Member("id"),
                $"The id '{id}' is taken by a {word} above; give this {word} another.");
        }
    }
}
