namespace EpisodePlanner.Planning.Files;

/// <summary>The ids in use, and the next free one for a name.</summary>
internal sealed class Names(IEnumerable<Id> taken)
{
    private readonly HashSet<Id> taken = [.. taken];
    private readonly Dictionary<string, int> last = new(StringComparer.Ordinal);

    /// <summary>The stem itself, or the stem with the first free number from 2; taken from now on.</summary>
    public Id Next(string stem)
    {
        for (var number = last.GetValueOrDefault(stem, 0) + 1; ; number++)
        {
            var id = new Id(number == 1 ? stem : $"{stem}-{number}");
            if (taken.Add(id))
            {
                last[stem] = number;
                return id;
            }
        }
    }
}
