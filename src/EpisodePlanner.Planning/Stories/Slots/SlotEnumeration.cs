namespace EpisodePlanner.Planning;

/// <summary>
/// Chooses slots exactly where few enough steps do it: window after window, one of the series or none, given up as soon as
/// what is chosen weighs no less than the best that is known.
/// </summary>
internal sealed class SlotEnumeration
{
    private const int MostSteps = 100_000;

    /// <summary>With more windows or episodes than these the steps would hardly ever do.</summary>
    private const int MostWindows = 16;
    private const int MostEpisodes = 12;

    private readonly SlotQuestion question;
    private readonly int[] choice;
    private readonly int[] next;
    private readonly int[] silentFrom;
    private readonly long open;
    private int left;
    private int steps;

    private SlotEnumeration(SlotQuestion question, int[] known, SlotWeights weights)
    {
        this.question = question;
        (Least, Weights) = (known, weights);
        choice = new int[question.Episodes.Count];
        next = new int[question.Series.Count];
        silentFrom = [.. question.Series.Select(series => series.Promise.SilentFrom)];
        left = question.Episodes.Count;
        open = question.Series.Select(series => series.Promise).Append(question.Channel)
            .Sum(promise => (long)SilencePenalty.OpenWeight(question.Through - promise.OpenFrom - promise.Longest));
    }

    private int[] Least { get; set; }

    private SlotWeights Weights { get; set; }

    /// <summary>A choice that weighs least, or the known one where that is it or too many steps would be needed.</summary>
    /// <param name="question">The question.</param>
    /// <param name="known">A sound choice.</param>
    public static int[] Best(SlotQuestion question, int[] known)
    {
        if (question.Windows.Count > MostWindows || known.Length > MostEpisodes || Array.IndexOf(known, -1) >= 0
            || question.Series.Any(series => series.Promise.Months is not null))
        {
            return known;
        }

        var search = new SlotEnumeration(question, known, SlotWeights.Of(question, known));
        var start = new SlotWeights(0, 0, search.open, 0);
        search.From(0, question.LastUploadDay, question.Channel.SilentFrom, start);
        return search.Least;
    }

    private void From(int window, int before, int channelFrom, SlotWeights soFar)
    {
        if (++steps > MostSteps || soFar >= Weights)
        {
            return;
        }

        if (left == 0)
        {
            (Least, Weights) = ([.. choice], soFar);
            return;
        }

        if (question.Windows.Count - window < left)
        {
            return;
        }

        for (var s = 0; s < next.Length; s++)
        {
            var episodes = question.Series[s].Episodes;
            if (next[s] < episodes.Count && question.Windows[window].Series.Contains(s))
            {
                Give(window, s, episodes[next[s]], before, channelFrom, soFar);
            }
        }

        From(window + 1, before, channelFrom, soFar);
    }

    private void Give(int window, int s, int index, int before, int channelFrom, SlotWeights soFar)
    {
        var (episode, at, promise) = (question.Episodes[index], question.Windows[window], question.Series[s].Promise);
        var day = episode.DayIn(at);
        if (!episode.Fits(at) || day - before < question.DaysBetweenUploads)
        {
            return;
        }

        var from = silentFrom[s];
        var silence = SilencePenalty.Weight(day - from - promise.Longest) + SilencePenalty.Weight(day - channelFrom - question.Channel.Longest);
        (choice[index], silentFrom[s]) = (window, day);
        next[s]++;
        left--;
        From(window + 1, day, day, new SlotWeights(
            0,
            soFar.LateMinutes + episode.LateAt(episode.MinuteIn(at)),
            soFar.Silence + silence,
            soFar.Days + day - question.Channel.SilentFrom));
        left++;
        next[s]--;
        silentFrom[s] = from;
    }
}
