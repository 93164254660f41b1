using EpisodePlanner.Planning;

namespace EpisodePlanner.Writing;

/// <summary>The timed lines of the episode, and free ones that would be true on its day.</summary>
internal static class OutlineLines
{
    public static Section Section(Ledger ledger, PlannedEpisode episode)
    {
        var lines = ledger.Workshop.TimedLines.OrderBy(line => line.Until).ToList();
        var own = lines.Where(line => line.Episode == episode.Id).Select(line => LineWording.Line(line, episode.Date));
        var free = lines.Where(line => line.Episode is null && IsTrueOn(line, episode)).Select(LineWording.Free);
        return Say.Section(2, $"Lines that are true for a time", own.Concat(free));
    }

    private static bool IsTrueOn(TimedLine line, PlannedEpisode episode) =>
        episode.Date is { } day && line.From <= day && day <= line.Until;
}
