namespace EpisodePlanner.Planning;

/// <summary>
/// Chooses the windows of one series' episodes, exactly, while the other series keep theirs: dynamic programming over
/// (episodes out so far, window of the last one).
/// </summary>
/// <remarks>
/// A promise by the month is not a sum over gaps; it counts here as days of a month for each upload, and the caller weighs
/// what comes out as it is.
/// </remarks>
internal sealed class SeriesTurns
{
    private readonly SlotQuestion question;
    private readonly int series;
    private readonly SlotPromise promise;
    private readonly ChannelGaps channel;
    private readonly HashSet<int> taken;
    private readonly int[] otherDays;

    /// <summary>Prepares for a series.</summary>
    /// <param name="question">The question.</param>
    /// <param name="series">The series, by position.</param>
    /// <param name="others">What the other series have.</param>
    public SeriesTurns(SlotQuestion question, int series, IReadOnlyCollection<TakenWindow> others)
    {
        (this.question, this.series, promise) = (question, series, question.Series[series].Promise);
        taken = [.. others.Select(other => other.Window)];
        otherDays = [.. others.Select(other => other.Day)];
        channel = new ChannelGaps(question.Channel.Longest, otherDays);
    }

    /// <summary>What the other series have in a choice.</summary>
    /// <param name="question">The question.</param>
    /// <param name="series">The series, by position.</param>
    /// <param name="windows">By episode: its window; −1 for none.</param>
    public static IReadOnlyList<TakenWindow> Others(SlotQuestion question, int series, IReadOnlyList<int> windows) =>
    [
        .. Enumerable.Range(0, windows.Count)
            .Where(e => question.Episodes[e].Series != series && windows[e] >= 0)
            .Select(e => new TakenWindow(windows[e], question.Episodes[e].DayIn(question.Windows[windows[e]]))),
    ];

    /// <summary>Whether a window is there for the series, on a day.</summary>
    public bool IsFree(int window, int day) =>
        question.Windows[window].Series.Contains(series)
        && !taken.Contains(window)
        && day - question.LastUploadDay >= question.DaysBetweenUploads
        && otherDays.All(other => Math.Abs(day - other) >= question.DaysBetweenUploads);

    /// <summary>What the first upload costs by its silences.</summary>
    public long First(int day) =>
        SilencePenalty.Weight(day - promise.SilentFrom - promise.Longest) + channel.Between(question.Channel.SilentFrom, day);

    /// <summary>What an upload costs by its silences after another.</summary>
    public long Next(int from, int to) => SilencePenalty.Weight(to - from - promise.Longest) + channel.Between(from, to);

    /// <summary>What the channel's silences after the series' last upload cost.</summary>
    public long End(int last) => channel.After(last);

    /// <summary>Whether two uploads of the series are far enough apart.</summary>
    public bool AreApart(int from, int to) => to - from >= question.DaysBetweenUploads;

    /// <summary>By episode of the series, in order: its window; null where not all of them find one.</summary>
    public int[]? Best()
    {
        var episodes = question.Series[series].Episodes;
        var count = question.Windows.Count;
        var steps = new (TurnCost Cost, int From)[episodes.Count, count];
        for (var k = 0; k < episodes.Count; k++)
        {
            for (var w = 0; w < count; w++)
            {
                steps[k, w] = Step(steps, episodes, k, w);
            }
        }

        return Traced(steps, episodes);
    }

    private (TurnCost Cost, int From) Step((TurnCost Cost, int From)[,] steps, ValueList<int> episodes, int k, int w)
    {
        var (episode, window) = (question.Episodes[episodes[k]], question.Windows[w]);
        var day = episode.DayIn(window);
        if (!episode.Fits(window) || !IsFree(w, day))
        {
            return (TurnCost.None, -1);
        }

        var (late, since) = (episode.LateAt(episode.MinuteIn(window)), (long)day - promise.SilentFrom);
        if (k == 0)
        {
            return (default(TurnCost).Plus(late, First(day), since), -1);
        }

        var (best, from) = (TurnCost.None, -1);
        for (var before = 0; before < w; before++)
        {
            if (!steps[k - 1, before].Cost.IsWay)
            {
                continue;
            }

            var last = question.Episodes[episodes[k - 1]].DayIn(question.Windows[before]);
            var cost = steps[k - 1, before].Cost.Plus(late, Next(last, day), since);
            if (AreApart(last, day) && cost.CompareTo(best) < 0)
            {
                (best, from) = (cost, before);
            }
        }

        return (best, from);
    }

    private int[]? Traced((TurnCost Cost, int From)[,] steps, ValueList<int> episodes)
    {
        var (best, window) = (TurnCost.None, -1);
        var last = episodes.Count - 1;
        for (var w = 0; last >= 0 && w < question.Windows.Count; w++)
        {
            if (steps[last, w].Cost.IsWay)
            {
                var cost = steps[last, w].Cost.Plus(0, End(question.Episodes[episodes[last]].DayIn(question.Windows[w])), 0);
                (best, window) = cost.CompareTo(best) < 0 ? (cost, w) : (best, window);
            }
        }

        if (window < 0)
        {
            return null;
        }

        var windows = new int[episodes.Count];
        for (var k = last; k >= 0; window = steps[k, window].From, k--)
        {
            windows[k] = window;
        }

        return windows;
    }
}

/// <summary>A window that an episode has, and the day on which it is out.</summary>
internal readonly record struct TakenWindow(int Window, int Day);
