using EpisodePlanner.Planning;
using EpisodePlanner.Proving.Bench;
using EpisodePlanner.Proving.Publishing;
using Google.OrTools.Sat;

namespace EpisodePlanner.Proving.Weights;

/// <summary>
/// Gives every episode a window: one slot, one episode, in the order of the story. Who comes first among series is left
/// open, and so is whether a window is the first one that is free.
/// </summary>
internal sealed class UploadRows
{
    private readonly PlanQuestion question;
    private readonly BenchModel bench;
    private readonly CpModel model;
    private readonly int last;
    private readonly List<BoolVar>[] taken;

    public UploadRows(PlanQuestion question, BenchModel bench)
    {
        (this.question, this.bench, model) = (question, bench, bench.Model);
        last = LastWindow();
        LatestDay = question.Windows.Take(last + 1).Max(window => window.LastDay);
        taken = [.. Enumerable.Range(0, last + 1).Select(_ => new List<BoolVar>())];
        All = [.. question.Episodes.Select(Add)];
        foreach (var uses in taken)
        {
            model.AddAtMostOne(uses);
        }

        foreach (var series in question.Series)
        {
            foreach (var (before, after) in series.Episodes.Zip(series.Episodes.Skip(1)))
            {
                Follow(All[before], All[after]);
            }
        }
    }

    /// <summary>The last day of the windows that are looked at.</summary>
    public int LatestDay { get; }

    /// <summary>By episode.</summary>
    public IReadOnlyList<UploadRow> All { get; }

    /// <summary>Whatever is ready by the limit finds a window up to this one, if others don't come together there.</summary>
    private int LastWindow()
    {
        var ready = bench.Limit + question.Episodes.Max(episode => episode.Lead);
        var used = question.Episodes.Max(episode => Math.Max(episode.Planned, episode.PinnedOpening));
        var until = Math.Max(ready, used);
        return Math.Min(
            question.Windows.Count, question.Windows.Count(window => window.Opening <= until) + (2 * question.Episodes.Count)) - 1;
    }

    private UploadRow Add(AskedEpisode episode)
    {
        var minute = model.NewIntVar(0, question.Known.Problem.Horizon, "public");
        var day = model.NewIntVar(question.Windows.Min(window => window.Day), LatestDay, "day");
        var (chosen, positions) = (new List<BoolVar>(), new List<LinearExpr>());
        var ready = EpisodeMoments.Of(bench, episode);
        ready.ForEach(moment => model.Add(minute >= moment));
        for (var position = 0; position <= last; position++)
        {
            var window = question.Windows[position];
            if (window.Series.Contains(episode.Series) && window.Opening >= episode.PinnedOpening
                && window.Day - question.LastUploadDay >= question.DaysBetweenUploads)
            {
                var isHere = model.NewBoolVar("window");
                chosen.Add(isHere);
                taken[position].Add(isHere);
                positions.Add(LinearExpr.Term(isHere, position));
                ready.ForEach(moment => model.Add(moment <= window.End - 1).OnlyEnforceIf(isHere));
                model.Add(minute >= Math.Max(0, window.Opening)).OnlyEnforceIf(isHere);
                model.AddLinearConstraint(day, window.Day, window.LastDay).OnlyEnforceIf(isHere);
            }
        }

        model.AddExactlyOne(chosen);
        return new UploadRow(minute, day, LinearExpr.Sum(positions));
    }

    private void Follow(UploadRow before, UploadRow after)
    {
        model.Add(after.Position >= before.Position + 1);
        model.Add(after.Day >= before.Day);
    }
}
