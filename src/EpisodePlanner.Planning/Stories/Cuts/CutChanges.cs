using EpisodePlanner.Planning.Files.Text;

namespace EpisodePlanner.Planning;

/// <summary>Turns cuts into changes of episodes.</summary>
internal static class CutChanges
{
    /// <summary>
    /// The episodes that come, change and go when a story is cut so. An episode that ends with the same milestone as before
    /// keeps its id, its title and all else. What comes last stays uncut where nobody has cut it.
    /// </summary>
    /// <param name="workshop">The workshop.</param>
    /// <param name="line">The series' line.</param>
    /// <param name="cuts">Where it shall be cut.</param>
    public static IEnumerable<Change> Of(Workshop workshop, StoryLine line, StoryCuts cuts)
    {
        if (cuts == line.Now)
        {
            return [];
        }

        var kept = new HashSet<Id>();
        var put = new List<Change>();
        foreach (var (first, last) in cuts.Segments())
        {
            if (line.Units[first].Fixed is null && !IsRest(line, first, last))
            {
                var episode = Episode(workshop, line, first, last, kept);
                kept.Add(episode.Id);
                if (workshop.Episodes.Find(episode.Id) != episode)
                {
                    put.Add(new EpisodeChange(episode.Id, episode));
                }
            }
        }

        var gone = line.Units.Select(unit => unit.Shown?.Id).OfType<Id>().Distinct().Where(id => !kept.Contains(id));
        return [.. gone.Select(id => new EpisodeChange(id, null)), .. put];
    }

    /// <summary>Whether the episode is what nobody has cut, and all of it.</summary>
    private static bool IsRest(StoryLine line, int first, int last) =>
        last == line.Units.Count - 1 && Enumerable.Range(first, last - first + 1).All(unit => line.Units[unit].Shown is null);

    private static Episode Episode(Workshop workshop, StoryLine line, int first, int last, HashSet<Id> taken)
    {
        var milestones = Enumerable.Range(first, last - first + 1).SelectMany(unit => line.Units[unit].Milestones).ToList();
        var ids = milestones.Select(milestone => milestone.Id).ToValueList();
        if (line.Units[last].Shown is { } shown && shown.Milestones[^1] == ids[^1])
        {
            return shown with { Milestones = ids };
        }

        return New(workshop, line.Series, ids, taken);
    }

    /// <summary>An episode that nobody has cut yet, called after the last milestone it shows.</summary>
    public static Episode New(Workshop workshop, Series series, ValueList<Id> milestones, HashSet<Id>? taken = null)
    {
        var last = series.Milestones.First(milestone => milestone.Id == milestones[^1]);
        return new Episode
        {
            Id = FreeId(workshop, $"{last.Id}", taken),
            Title = last.Name,
            Series = series.Id,
            Milestones = milestones,
        };
    }

    /// <summary>An id for an episode that no other has, nor any that is taken, like some words.</summary>
    public static Id FreeId(Workshop workshop, string words, HashSet<Id>? taken = null)
    {
        var stem = Slug.Of(words) is { Length: > 0 } slug ? slug : "episode";
        for (var n = 1; ; n++)
        {
            var text = n == 1 ? stem : $"{stem[..Math.Min(stem.Length, Id.MaximumLength - 4)]}-{n}";
            if (Id.IsValid(text) && new Id(text) is var id && !workshop.Episodes.Contains(id) && taken?.Contains(id) != true)
            {
                return id;
            }
        }
    }
}
