using EpisodePlanner.Planning;

namespace EpisodePlanner.Proving.Publishing;

/// <summary>An episode with those that come before it in the story, and the windows that its series may use.</summary>
internal sealed class EpisodeLine
{
    public EpisodeLine(PlanQuestion question, int episode)
    {
        Question = question;
        Last = question.Episodes[episode];
        var line = question.Series[Last.Series].Episodes;
        Before = [.. line.TakeWhile(other => other != episode).Select(other => question.Episodes[other])];
        Windows = [.. question.Windows.Where(window =>
            window.Series.Contains(Last.Series) && window.Day - question.LastUploadDay >= question.DaysBetweenUploads)];
    }

    public PlanQuestion Question { get; }

    /// <summary>The episode that is asked about.</summary>
    public AskedEpisode Last { get; }

    /// <summary>Those that must be out before it, in order.</summary>
    public IReadOnlyList<AskedEpisode> Before { get; }

    /// <summary>The windows, in the order in which they are given away.</summary>
    public IReadOnlyList<AskedWindow> Windows { get; }

    /// <summary>All stages that must be done before it is out.</summary>
    public IReadOnlyList<int> Stages => [.. Before.Append(Last).SelectMany(episode => episode.Stages).Distinct()];

    /// <summary>The last of the windows in which the plan may have published it; the very last where it has not.</summary>
    public int PlannedWindow
    {
        get
        {
            var found = Last.Planned < 0 ? -1 : ((List<AskedWindow>)[.. Windows]).FindLastIndex(window =>
                Math.Max(0, window.Opening) <= Last.Planned && Math.Max(window.Opening, window.End - 1) >= Last.Planned);
            return found >= 0 ? found : Windows.Count - 1;
        }
    }

    /// <summary>Whether the order of the story and a pin leave it a window.</summary>
    public bool Admits(int window) => window >= Before.Count && Windows[window].Opening >= Last.PinnedOpening;

    /// <summary>When it would be public in a window at the earliest.</summary>
    public int Opens(int window) => Math.Max(0, Windows[window].Opening);

    /// <summary>The last minute at which what goes out in a window is available.</summary>
    public int AvailableBy(int window) => Windows[window].End - 1;

    /// <summary>The last minute at which what goes out before a window is available.</summary>
    public int AvailableBefore(int window) => window == 0 ? -1 : Windows.Take(window).Max(other => other.End) - 1;

    /// <summary>The first window in which something may be public at a minute or later; null for none.</summary>
    public int? FirstOpenAt(int minute, int from)
    {
        for (var window = from; window < Windows.Count; window++)
        {
            if (Admits(window) && Math.Max(Opens(window), AvailableBy(window)) >= minute)
            {
                return window;
            }
        }

        return null;
    }
}
