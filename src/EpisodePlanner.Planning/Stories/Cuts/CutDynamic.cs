namespace EpisodePlanner.Planning;

/// <summary>
/// Chooses the cuts of one series together with the windows of its episodes while the other series keep theirs: dynamic
/// programming over (episodes so far, unit the last one ends with, its window), exact for the ready times it is given.
/// </summary>
/// <remarks>A day within a window that lasts several counts as the window's first; the plan that follows counts the real one.</remarks>
internal sealed class CutDynamic
{
    private readonly StoryLine line;
    private readonly ReadyGuess guess;
    private readonly SlotQuestion question;
    private readonly SeriesTurns turns;
    private readonly SlotEpisode?[] stays;
    private readonly int silentFrom;
    private readonly bool[] isFree;
    private readonly long[] gaps;
    private readonly Step[,][] steps;

    /// <summary>Prepares the choice.</summary>
    /// <param name="line">The series.</param>
    /// <param name="guess">When its episodes would be ready.</param>
    /// <param name="question">The slots, with the episodes as they are cut in the plan.</param>
    /// <param name="series">The series, by position in the question.</param>
    /// <param name="others">The windows that the other series have.</param>
    public CutDynamic(
        StoryLine line, ReadyGuess guess, SlotQuestion question, int series, IReadOnlyCollection<TakenWindow> others)
    {
        (this.line, this.guess, this.question) = (line, guess, question);
        turns = new SeriesTurns(question, series, others);
        silentFrom = question.Series[series].Promise.SilentFrom;
        stays = Stays(question.Series[series].Episodes);
        isFree = [.. question.Windows.Select((window, w) => turns.IsFree(w, window.Day))];
        gaps = Gaps();
        steps = new Step[line.Units.Count, line.Units.Count][];
    }

    private int Windows => question.Windows.Count;

    /// <summary>The best cuts; null where the episodes don't find their windows however it is cut.</summary>
    public StoryCuts? Best()
    {
        for (var last = 0; last < line.Units.Count; last++)
        {
            Begin(last);
        }

        for (var k = 0; k + 1 < line.Units.Count; k++)
        {
            for (var i = k; i + 1 < line.Units.Count; i++)
            {
                if (steps[k, i] is { } ended)
                {
                    GoOn(k, i, Reach(ended));
                }
            }
        }

        return Traced();
    }

    /// <summary>Episodes that come first.</summary>
    private void Begin(int last)
    {
        if (!line.IsEpisode(0, last))
        {
            return;
        }

        var (own, misfit) = (Asked(0, last), line.Misfit(0, last));
        for (var w = 0; w < Windows; w++)
        {
            if (isFree[w] && own.Fits(question.Windows[w]))
            {
                var silence = turns.First(question.Windows[w].Day);
                Offer(0, last, w, new Step(Cost(own, w, misfit).WithSilence(silence), -1, -1));
            }
        }
    }

    /// <summary>By window of the next upload: what it costs so far at least, and the window of the one before.</summary>
    private (CutCost Cost, int From)[] Reach(Step[] ended)
    {
        var reach = new (CutCost Cost, int From)[Windows];
        Array.Fill(reach, (CutCost.None, -1));
        for (var w = 0; w < Windows; w++)
        {
            if (!ended[w].Cost.IsWay)
            {
                continue;
            }

            for (var next = w + 1; next < Windows; next++)
            {
                var gap = gaps[(w * Windows) + next];
                if (gap < 0)
                {
                    continue;
                }

                var cost = ended[w].Cost.WithSilence(gap);
                if (cost.IsLessThan(reach[next].Cost))
                {
                    reach[next] = (cost, w);
                }
            }
        }

        return reach;
    }

    private void GoOn(int k, int i, (CutCost Cost, int From)[] reach)
    {
        for (var j = i + 1; j < line.Units.Count; j++)
        {
            if (!line.IsEpisode(i + 1, j))
            {
                continue;
            }

            var (own, misfit) = (Asked(k + 1, j), line.Misfit(i + 1, j));
            for (var w = 0; w < Windows; w++)
            {
                if (reach[w].Cost.IsWay && own.Fits(question.Windows[w]))
                {
                    Offer(k + 1, j, w, new Step(reach[w].Cost.Plus(Cost(own, w, misfit)), i, reach[w].From));
                }
            }
        }
    }

    private void Offer(int k, int last, int window, Step step)
    {
        var all = steps[k, last] ??= Nothing();
        if (step.Cost.IsLessThan(all[window].Cost))
        {
            all[window] = step;
        }
    }

    private Step[] Nothing()
    {
        var all = new Step[Windows];
        Array.Fill(all, new Step(CutCost.None, -1, -1));
        return all;
    }

    private CutCost Cost(SlotEpisode own, int window, long misfit) => CutCost.OfEpisode(
        misfit, own.LateAt(own.MinuteIn(question.Windows[window])), question.Windows[window].Day - silentFrom);

    private SlotEpisode Asked(int episodesBefore, int last)
    {
        var available = guess.AvailableFrom(episodesBefore, last);
        return stays[last] is { } fix
            ? fix with { Available = available, AvailableDay = 0 }
            : new SlotEpisode(0, available, 0, -1, []);
    }

    private StoryCuts? Traced()
    {
        var (best, k, window) = (CutCost.None, -1, -1);
        var last = line.Units.Count - 1;
        for (var count = 0; count < line.Units.Count; count++)
        {
            for (var w = 0; steps[count, last] is { } ended && w < Windows; w++)
            {
                var cost = ended[w].Cost;
                var whole = cost.IsWay ? cost.WithSilence(turns.End(question.Windows[w].Day)) : CutCost.None;
                if (whole.IsLessThan(best))
                {
                    (best, k, window) = (whole, count, w);
                }
            }
        }

        return k < 0 ? null : Traced(k, last, window);
    }

    private StoryCuts Traced(int k, int last, int window)
    {
        var ends = new bool[line.Units.Count];
        while (k >= 0)
        {
            ends[last] = true;
            var step = steps[k, last][window];
            (k, last, window) = (k - 1, step.Unit, step.Window);
        }

        return new StoryCuts([.. ends]);
    }

    private long[] Gaps()
    {
        var all = new long[Windows * Windows];
        for (var w = 0; w < Windows; w++)
        {
            for (var next = w + 1; next < Windows; next++)
            {
                var (from, to) = (question.Windows[w].Day, question.Windows[next].Day);
                all[(w * Windows) + next] = isFree[next] && turns.AreApart(from, to) ? turns.Next(from, to) : -1;
            }
        }

        return all;
    }

    /// <summary>By unit: the asked episode that stays; null for a free milestone.</summary>
    private SlotEpisode?[] Stays(ValueList<int> episodes)
    {
        var (all, count) = (new SlotEpisode?[line.Units.Count], 0);
        for (var unit = 0; unit < all.Length; unit++)
        {
            all[unit] = line.Units[unit].Fixed is not null && count < episodes.Count ? question.Episodes[episodes[count]] : null;
            count += line.Now.EndsAfter[unit] ? 1 : 0;
        }

        return all;
    }

    /// <summary>An episode in a window, with the unit and the window of the one before; −1 for none.</summary>
    private readonly record struct Step(CutCost Cost, int Unit, int Window);
}
