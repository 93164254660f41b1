using EpisodePlanner.Planning;

namespace EpisodePlanner.Writing;

/// <summary>Why an episode has no outline, and which one may have been meant.</summary>
internal static class UnknownEpisode
{
    public static Reason Reason(Plan plan, Id episode)
    {
        var workshop = plan.Request.Workshop;
        var where = $"$.episodes['{episode}']";
        if (workshop.Uploads.FirstOrDefault(upload => upload.Episode == episode && !episode.IsEmpty) is { } upload)
        {
            var since = InWords.Day(upload.Date);
            return new Reason(where, $"Episode '{episode}' is public since {since}; outlines are for episodes to come.");
        }

        var nearest = plan.Episodes.Select(planned => planned.Id).OrderBy(id => Distance(id, episode)).FirstOrDefault();
        return new Reason(where, nearest.IsEmpty
            ? $"There is no episode '{episode}', and the plan has no other."
            : $"There is no episode '{episode}' to come; the nearest name is '{nearest}'.");
    }

    // Levenshtein's distance, letters of either case alike.
    private static int Distance(Id one, Id other)
    {
        var (from, to) = ($"{one}".ToLowerInvariant(), $"{other}".ToLowerInvariant());
        var row = Enumerable.Range(0, to.Length + 1).ToArray();
        foreach (var (i, letter) in from.Index())
        {
            var corner = row[0];
            row[0] = i + 1;
            for (var j = 1; j <= to.Length; j++)
            {
                var swap = corner + (letter == to[j - 1] ? 0 : 1);
                corner = row[j];
                row[j] = Math.Min(swap, Math.Min(corner, row[j - 1]) + 1);
            }
        }

        return row[^1];
    }
}
