namespace EpisodePlanner.Planning;

/// <summary>
/// Gives slots to episodes, window after window: the first free window whose end comes strictly after an episode is
/// ready and led up to. One slot, one episode; series keep their story order. Of several that could take a window:
/// the pinned one, then one whose date was told, then the series whose promise breaks first, then by name.
/// </summary>
internal sealed class SlotSweep
{
    private const int None = -1;

    private readonly EpisodeTable table;
    private readonly ValueList<SlotWindow> windows;
    private readonly int[] windowDays;
    private readonly bool[] admits;
    private readonly int apart;
    private readonly int lastUpload;
    private readonly Func<int, int> dayOf;
    private readonly int[] next;
    private readonly int[] silentFrom;

    /// <summary>Prepares to give the windows of a plan.</summary>
    /// <param name="table">Episodes and series.</param>
    /// <param name="windows">The windows, by opening.</param>
    /// <param name="apart">Least days between two uploads of the channel.</param>
    /// <param name="lastUpload">The channel's last upload, as a day number; <see cref="int.MinValue"/> / 2 for none.</param>
    /// <param name="dayOf">The local day number of a minute.</param>
    public SlotSweep(EpisodeTable table, ValueList<SlotWindow> windows, int apart, int lastUpload, Func<int, int> dayOf)
    {
        (this.table, this.windows, this.apart, this.lastUpload, this.dayOf) = (table, windows, apart, lastUpload, dayOf);
        windowDays = [.. windows.Select(w => SilencePenalty.DayNumber(w.LocalOpening.Date))];
        admits = [.. windows.SelectMany(w => table.Series.Select(s => w.Admits(s.Series.Id)))];
        next = new int[table.Series.Count];
        silentFrom = new int[table.Series.Count];
        Windows = new int[table.Episodes.Count];
        Minutes = new int[table.Episodes.Count];
        Days = new int[table.Episodes.Count];
    }

    /// <summary>By episode: the index of its window; −1 for none.</summary>
    public int[] Windows { get; }

    /// <summary>By episode: its public minute; −1 for none.</summary>
    public int[] Minutes { get; }

    /// <summary>By episode: the day number of its public moment; −1 for none.</summary>
    public int[] Days { get; }

    /// <summary>Gives the windows for a schedule.</summary>
    /// <param name="finishes">By stage of the bench problem: when it is finished; −1 for never.</param>
    public void Run(ReadOnlySpan<int> finishes)
    {
        Windows.AsSpan().Fill(None);
        Minutes.AsSpan().Fill(None);
        Days.AsSpan().Fill(None);
        next.AsSpan().Clear();
        var left = table.Episodes.Count;
        for (var s = 0; s < silentFrom.Length; s++)
        {
            silentFrom[s] = table.Series[s].SilentFrom;
        }

        var before = lastUpload;
        for (var w = 0; w < windows.Count && left > 0; w++)
        {
            if (windowDays[w] - before < apart || Choose(w, finishes) is not (>= 0 and var episode))
            {
                continue;
            }

            Give(w, episode, finishes);
            before = Days[episode];
            left--;
        }
    }

    /// <summary>When an episode may be public at the earliest; −1 where it is never ready.</summary>
    public static int AvailableFrom(EpisodeRow episode, ReadOnlySpan<int> finishes)
    {
        var ready = episode.ReadyStage < 0 ? 0 : finishes[episode.ReadyStage];
        var fixes = episode.FixesStage < 0 ? 0 : finishes[episode.FixesStage];
        return ready < 0 || fixes < 0 ? None : Math.Max(ready + episode.Lead, fixes);
    }

    private int Choose(int window, ReadOnlySpan<int> finishes)
    {
        var (best, bestRank) = (None, (int.MaxValue, int.MaxValue));
        for (var s = 0; s < table.Series.Count; s++)
        {
            var series = table.Series[s];
            if (next[s] >= series.Episodes.Count || !admits[(window * table.Series.Count) + s])
            {
                continue;
            }

            var episode = series.Episodes[next[s]];
            if (!Fits(table.Episodes[episode], window, finishes))
            {
                continue;
            }

            var rank = Rank(table.Episodes[episode], s, window);
            if (rank.CompareTo(bestRank) < 0)
            {
                (best, bestRank) = (episode, rank);
            }
        }

        return best;
    }

    private bool Fits(EpisodeRow episode, int window, ReadOnlySpan<int> finishes)
    {
        var available = AvailableFrom(episode, finishes);
        return available >= 0 && windows[window].End > available && windows[window].Opening >= episode.PinnedOpening;
    }

    private (int Kind, int Breaks) Rank(EpisodeRow episode, int series, int window)
    {
        var kind = episode.PinnedOpening >= 0 && episode.PinnedOpening == Math.Max(0, windows[window].Opening) ? 0
            : episode.PinnedOpening >= 0 || episode.ToldBy >= 0 ? 1
            : 2;
        return (kind, silentFrom[series] + table.Series[series].LongestSilence);
    }

    private void Give(int window, int episode, ReadOnlySpan<int> finishes)
    {
        var row = table.Episodes[episode];
        var minute = Math.Max(0, Math.Max(windows[window].Opening, AvailableFrom(row, finishes)));
        Windows[episode] = window;
        Minutes[episode] = minute;
        Days[episode] = minute == windows[window].Opening ? windowDays[window] : dayOf(minute);
        silentFrom[row.Series] = Days[episode];
        next[row.Series]++;
    }
}
