namespace EpisodePlanner.Planning;

/// <summary>
/// Chooses slots so that silences weigh least: an episode that is ready may be held back for a later window. For one
/// series the choice is exact; over several, each series in turn is chosen anew while the others keep theirs, neighbours
/// of different series change places, and where few enough steps do it one series is chosen as if another had nothing,
/// and then that one, until nothing gets better. Where few enough steps do it, every other choice is ruled out after that.
/// </summary>
public static class SlotChoice
{
    private const int MostRounds = 8;
    private const int Neighbours = 3;

    /// <summary>Steps within which pairs of series are tried: episodes times pairs of windows times pairs of series.</summary>
    private const long MostPairSteps = 250_000;

    /// <summary>Chooses windows.</summary>
    /// <param name="question">The question.</param>
    /// <param name="first">By episode: the window it has to begin with; −1 for none.</param>
    /// <returns>By episode: its window, no worse than at first; −1 for none.</returns>
    public static int[] Best(SlotQuestion question, ReadOnlySpan<int> first)
    {
        int[] best = [.. first];
        var weights = SlotWeights.Of(question, best);
        for (var round = 0; round < MostRounds; round++)
        {
            var before = weights;
            for (var series = 0; series < question.Series.Count; series++)
            {
                Take(question, Chosen(question, series, best), ref best, ref weights);
            }

            foreach (var swapped in Swaps(question, best))
            {
                Take(question, swapped, ref best, ref weights);
            }

            foreach (var pair in Pairs(question))
            {
                Take(question, Chosen(question, pair, best), ref best, ref weights);
            }

            if (weights == before)
            {
                break;
            }
        }

        return SlotEnumeration.Best(question, best);
    }

    private static void Take(SlotQuestion question, int[]? candidate, ref int[] best, ref SlotWeights weights)
    {
        if (candidate is not null && SlotWeights.Of(question, candidate) is var weighs && weighs < weights)
        {
            (best, weights) = (candidate, weighs);
        }
    }

    private static IEnumerable<(int First, int Second)> Pairs(SlotQuestion question)
    {
        var series = Enumerable.Range(0, question.Series.Count).Where(s => question.Series[s].Episodes.Count > 0).ToList();
        var steps = (long)question.Episodes.Count * question.Windows.Count * question.Windows.Count * series.Count;
        return steps > MostPairSteps
            ? []
            : series.SelectMany(first => series.Where(second => second != first), (first, second) => (first, second));
    }

    /// <summary>The first series chosen as if the second had nothing, then the second.</summary>
    private static int[]? Chosen(SlotQuestion question, (int First, int Second) pair, int[] windows)
    {
        int[] without = [.. windows];
        foreach (var episode in question.Series[pair.Second].Episodes)
        {
            without[episode] = -1;
        }

        return Chosen(question, pair.First, without) is { } first ? Chosen(question, pair.Second, first) : null;
    }

    private static int[]? Chosen(SlotQuestion question, int series, int[] windows)
    {
        if (question.Series[series].Episodes.Count == 0 || new SeriesTurns(question, series, SeriesTurns.Others(question, series, windows)).Best() is not { } own)
        {
            return null;
        }

        int[] all = [.. windows];
        for (var k = 0; k < own.Length; k++)
        {
            all[question.Series[series].Episodes[k]] = own[k];
        }

        return all;
    }

    /// <summary>Choices in which two episodes of different series, near each other, have changed places.</summary>
    private static IEnumerable<int[]> Swaps(SlotQuestion question, int[] windows)
    {
        var order = Enumerable.Range(0, windows.Length).Where(e => windows[e] >= 0).OrderBy(e => windows[e]).ToList();
        for (var i = 0; i < order.Count; i++)
        {
            for (var j = i + 1; j < Math.Min(order.Count, i + 1 + Neighbours); j++)
            {
                int[] swapped = [.. windows];
                (swapped[order[i]], swapped[order[j]]) = (windows[order[j]], windows[order[i]]);
                if (question.Episodes[order[i]].Series != question.Episodes[order[j]].Series && IsSound(question, swapped))
                {
                    yield return swapped;
                }
            }
        }
    }

    /// <summary>Whether a choice keeps what the question asks: windows in order, admitted, apart, each once.</summary>
    public static bool IsSound(SlotQuestion question, ReadOnlySpan<int> windows)
    {
        var given = new List<(int Window, int Day)>();
        foreach (var (series, position) in question.Series.Select((series, position) => (series, position)))
        {
            var last = -1;
            foreach (var episode in series.Episodes)
            {
                if (windows[episode] < 0)
                {
                    last = int.MaxValue;
                    continue;
                }

                var (asked, window) = (question.Episodes[episode], question.Windows[windows[episode]]);
                if (windows[episode] <= last || !asked.Fits(window) || !window.Series.Contains(position))
                {
                    return false;
                }

                last = windows[episode];
                given.Add((windows[episode], asked.DayIn(window)));
            }
        }

        given.Sort();
        var before = question.LastUploadDay;
        foreach (var (_, day) in given)
        {
            if (day - before < question.DaysBetweenUploads)
            {
                return false;
            }

            before = day;
        }

        return given.Select(x => x.Window).Distinct().Count() == given.Count;
    }
}
