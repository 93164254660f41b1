using EpisodePlanner.Checking;

namespace EpisodePlanner.Trials.Fuzzing;

/// <summary>Ids that the server knew a moment ago: those of the file, and those that it gave since.</summary>
internal sealed class KnownIds(Dice dice)
{
    private const int Kept = 5;
    private readonly Dictionary<string, List<string>> ids = new()
    {
        ["people"] = ["me"],
        ["places"] = ["bench-1", "bench-2"],
        ["series"] = ["s"],
        ["tasks"] = ["task-1", "task-2", "task-3"],
        ["uploads"] = ["first"],
    };

    /// <summary>Remembers what was created.</summary>
    /// <param name="location">Where it is: …/collection/id.</param>
    public void Add(Uri location)
    {
        var steps = location.OriginalString.Split('/');
        var known = ids.TryGetValue(steps[^2], out var found) ? found : ids[steps[^2]] = [];
        known.Add(steps[^1]);
        if (known.Count > Kept)
        {
            known.RemoveAt(0);
        }
    }

    /// <summary>An id of a collection, or one that nobody has.</summary>
    public string Of(string collection) => ids.TryGetValue(collection, out var known) ? dice.Pick(known) : "nobody";
}
