namespace EpisodePlanner.Planning.Tests.Stories;

/// <summary>
/// Choosing slots against every sound choice there is. Source: brute force; what is sound is written here anew, from what
/// design.md says about slots.
/// </summary>
public sealed class SlotChoiceTests
{
    private const int First = 100;

    public static TheoryData<int> Seeds => [.. Enumerable.Range(1, 60)];

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Best_OneSeries_IsTheLeastOfAll(int seed)
    {
        var question = Random(new Dice(seed), 1);
        var least = Least(question);
        var first = Earliest(question);
        if (least is null || first is null)
        {
            Assert.Null(first);
            return;
        }

        Assert.Equal(least.Value, SlotWeights.Of(question, SlotChoice.Best(question, first)));
    }

    [Fact]
    public void Best_ThreeSeries_IsTheLeastOfAll()
    {
        var asked = 0;
        for (var seed = 1; seed <= 200; seed++)
        {
            var question = Random(new Dice(seed), 3);
            if (Earliest(question) is not { } first)
            {
                continue;
            }

            var chosen = SlotChoice.Best(question, first);
            Assert.True(SlotChoice.IsSound(question, chosen), $"seed {seed}");
            Assert.True(IsSound(question, chosen), $"seed {seed}");
            Assert.True(SlotWeights.Of(question, chosen) == Least(question), $"seed {seed}");
            asked++;
        }

        Assert.True(asked >= 100, $"{asked} questions had an answer");
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Of_RandomChoice_CountsGapAfterGap(int seed)
    {
        var dice = new Dice(seed);
        var question = Random(dice, 2);
        if (Earliest(question) is not { } windows)
        {
            return;
        }

        var weights = SlotWeights.Of(question, windows);

        var days = windows.Select((w, e) => (question.Episodes[e].Series, Day: question.Episodes[e].DayIn(question.Windows[w]))).ToList();
        var silence = question.Series.Select((series, s) => Gaps(series.Promise, days.Where(d => d.Series == s).Select(d => d.Day), question.Through)).Sum()
            + Gaps(question.Channel, days.Select(d => d.Day), question.Through);
        Assert.Equal((0, silence), (weights.Unpublished, weights.Silence));
    }

    private static long Gaps(SlotPromise promise, IEnumerable<int> days, int through)
    {
        var (total, from) = (0L, promise.SilentFrom);
        foreach (var day in days.Order())
        {
            var over = Math.Max(0, day - from - promise.Longest);
            total += over <= 30 ? over * over : 900 + (60 * (over - 30));
            from = day;
        }

        var open = Math.Clamp(through - promise.OpenFrom - promise.Longest, 0, 30);
        return total + (open * open);
    }

    /// <summary>A window each about five days, up to eight; episodes that are ready somewhere before the later ones.</summary>
    private static SlotQuestion Random(Dice dice, int series)
    {
        var day = First;
        var windows = Enumerable.Range(0, 8).Select(_ =>
        {
            day += dice.Between(1, 12);
            int[] admitted = [.. Enumerable.Range(0, series).Where(_ => Chance(dice, 85))];
            var opening = (day - First) * 1440;
            var end = opening + (Chance(dice, 30) ? dice.Between(60, 2_880) : 0);
            return new AskedWindow(opening, end, day, First + (Math.Max(opening, end - 1) / 1440), admitted.ToValueList());
        }).ToValueList();
        var episodes = Enumerable.Range(0, dice.Between(series, 5)).Select(e => Episode(dice, e % series)).ToValueList();
        SlotPromise Promise(int longest) => new(First - dice.Between(0, 20), longest, First + 30);
        return new SlotQuestion
        {
            Windows = windows,
            Episodes = episodes,
            Series = Enumerable.Range(0, series).Select(s => new SlotSeries(
                Promise(dice.Between(5, 25)), Enumerable.Range(0, episodes.Count).Where(e => e % series == s).ToValueList())).ToValueList(),
            Channel = Promise(dice.Between(3, 15)),
            DaysBetweenUploads = dice.Between(0, 4),
            LastUploadDay = First - dice.Between(0, 10),
            Through = First + 90,
            Never = 200 * 1440,
        };
    }

    private static bool Chance(Dice dice, int percent) => dice.Between(1, 100) <= percent;

    private static SlotEpisode Episode(Dice dice, int series)
    {
        var available = dice.Between(0, 40 * 1440);
        int[] by = Chance(dice, 20) ? [available + dice.Between(0, 10 * 1440)] : [];
        return new SlotEpisode(series, available, First + (available / 1440), Chance(dice, 15) ? available + 1440 : -1, [.. by]);
    }

    /// <summary>The first sound choice in order of windows; null where there is none.</summary>
    private static int[]? Earliest(SlotQuestion question) => All(question).FirstOrDefault();

    private static SlotWeights? Least(SlotQuestion question)
    {
        SlotWeights? least = null;
        foreach (var choice in All(question))
        {
            var weights = SlotWeights.Of(question, choice);
            least = least is null || weights < least ? weights : least;
        }

        return least;
    }

    /// <summary>Every choice that gives each episode a window and is sound.</summary>
    private static IEnumerable<int[]> All(SlotQuestion question)
    {
        var count = question.Episodes.Count;
        var choice = new int[count];
        IEnumerable<int[]> From(int episode)
        {
            if (episode == count)
            {
                if (IsSound(question, choice))
                {
                    yield return [.. choice];
                }

                yield break;
            }

            for (var w = 0; w < question.Windows.Count; w++)
            {
                if (choice.AsSpan(0, episode).Contains(w))
                {
                    continue;
                }

                choice[episode] = w;
                foreach (var whole in From(episode + 1))
                {
                    yield return whole;
                }
            }
        }

        return From(0);
    }

    /// <summary>One window, one episode; ready strictly before its end; not before a pinned opening; story order; days apart.</summary>
    private static bool IsSound(SlotQuestion question, int[] choice)
    {
        for (var e = 0; e < choice.Length; e++)
        {
            var (episode, window) = (question.Episodes[e], question.Windows[choice[e]]);
            if (!window.Series.Contains(episode.Series) || episode.Available >= Math.Max(window.End, window.Opening)
                || window.Opening < episode.PinnedOpening
                || question.Series[episode.Series].Episodes.Any(other => other < e && choice[other] >= choice[e]))
            {
                return false;
            }
        }

        int[] days = [.. choice.Select((w, e) => question.Episodes[e].DayIn(question.Windows[w])).Order().Prepend(question.LastUploadDay)];
        return days.Zip(days.Skip(1)).All(pair => pair.Second - pair.First >= question.DaysBetweenUploads);
    }
}
