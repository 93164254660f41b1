using NodaTime;

namespace EpisodePlanner.Planning;

/// <summary>An episode that is not out yet.</summary>
/// <param name="Episode">The episode, as the workshop has it or as it was assumed.</param>
/// <param name="Series">Its series.</param>
/// <param name="Assumed">Nobody has cut it.</param>
internal sealed record UpcomingEpisode(Episode Episode, Series Series, bool Assumed);

/// <summary>Finds the episodes to come, in story order per series.</summary>
internal static class UpcomingEpisodes
{
    /// <summary>The cut episodes that are not out, and for what is in no episode one more per series.</summary>
    public static IReadOnlyList<UpcomingEpisode> Of(Workshop workshop, LocalDate today)
    {
        var isOut = workshop.Uploads.Where(u => u.Date <= today && u.Episode is not null).Select(u => u.Episode!.Value).ToHashSet();
        var cut = workshop.Episodes.SelectMany(e => e.Milestones).ToHashSet();
        var upcoming = new List<UpcomingEpisode>();
        foreach (var series in workshop.Series.Where(s => s.State != SeriesState.Finished))
        {
            var place = series.Milestones.Select((m, i) => (m.Id, i)).ToDictionary(x => x.Id, x => x.i);
            var episodes = workshop.Episodes.Where(e => e.Series == series.Id && !isOut.Contains(e.Id))
                .Select(e => new UpcomingEpisode(e, series, false));
            var rest = series.Milestones.Where(m => !cut.Contains(m.Id)).Select(m => m.Id).ToValueList();
            if (rest.Count > 0)
            {
                episodes = episodes.Append(new UpcomingEpisode(Rest(workshop, series, rest), series, true));
            }

            upcoming.AddRange(episodes.OrderBy(e => FirstPlace(e.Episode, place)).ThenBy(e => e.Episode.Id));
        }

        return upcoming;
    }

    /// <summary>
    /// Its place in the story. An episode that shows no milestone waits for nothing in the story and comes before all;
    /// one that is pinned as well comes after, so that it holds nobody up.
    /// </summary>
    private static int FirstPlace(Episode episode, Dictionary<Id, int> place) => episode.Milestones.Count > 0
        ? episode.Milestones.Min(m => place.GetValueOrDefault(m, int.MaxValue))
        : episode.PinnedSlot is null ? -1 : int.MaxValue;

    private static Episode Rest(Workshop workshop, Series series, ValueList<Id> milestones)
    {
        var last = series.Milestones.Last(m => milestones.Contains(m.Id));
        return new Episode
        {
            Id = FreeId(workshop, series),
            Title = $"{series.Name}, up to {last.Name}",
            Series = series.Id,
            Milestones = milestones,
        };
    }

    private static Id FreeId(Workshop workshop, Series series)
    {
        var stem = series.Id.ToString();
        for (var n = 1; ; n++)
        {
            var suffix = n == 1 ? ".rest" : $".rest{n}";
            var id = new Id(stem[..Math.Min(stem.Length, Id.MaximumLength - suffix.Length)] + suffix);
            if (!workshop.Episodes.Contains(id))
            {
                return id;
            }
        }
    }
}
