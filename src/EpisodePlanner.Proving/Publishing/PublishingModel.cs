using EpisodePlanner.Planning;
using EpisodePlanner.Proving.Bench;
using EpisodePlanner.Proving.Solving;
using EpisodePlanner.Scheduling;
using Google.OrTools.Sat;

namespace EpisodePlanner.Proving.Publishing;

/// <summary>The relaxation of a workshop with the windows of one line of episodes: when is the last one public?</summary>
internal sealed class PublishingModel
{
    private readonly EpisodeLine line;
    private readonly BenchModel bench;
    private readonly CpModel model;
    private readonly int first;
    private readonly int last;

    /// <summary>Builds it.</summary>
    /// <param name="line">The episodes.</param>
    /// <param name="first">No earlier window is possible for the last one.</param>
    /// <param name="last">The last window looked at.</param>
    /// <param name="rules">What the bound rests on.</param>
    public PublishingModel(EpisodeLine line, int first, int last, BoundRules rules)
    {
        (this.line, this.first, this.last) = (line, first, last);
        var known = line.Question.Known;
        var reached = line.Last.Planned >= 0 && line.Stages.All(known.IsPlaced)
            ? line.Stages.Select(known.Finish).Append(line.Last.Planned).Max()
            : known.Problem.Horizon;
        bench = new BenchModel(known.Problem, line.Stages, Math.Min(reached, known.Problem.Horizon), rules);
        model = bench.Model;
    }

    /// <summary>No schedule publishes it before this minute; null where none does in the windows looked at.</summary>
    public int? Bound(ProofLimits limits, CancellationToken stop)
    {
        if (bench.IsImpossible)
        {
            return null;
        }

        var publish = model.NewIntVar(0, Math.Max(line.Opens(last), line.AvailableBy(last)), "publish");
        LinearExpr before = model.NewConstant(-1);
        foreach (var episode in line.Before)
        {
            before = Place(episode, before, 0, null);
        }

        Place(line.Last, before, first, publish);
        model.Minimize(publish);
        var answer = SolverRun.Minimize(model, limits, stop: stop);
        return answer.IsImpossible ? null : (int)Math.Max(0, answer.Bound);
    }

    /// <summary>Gives an episode a window after another; the position of the window.</summary>
    private LinearExpr Place(AskedEpisode episode, LinearExpr after, int from, IntVar? publish)
    {
        var chosen = new List<BoolVar>();
        var (ready, positions) = (EpisodeMoments.Of(bench, episode), new List<LinearExpr>());
        for (var window = from; window <= last; window++)
        {
            if (line.Windows[window].Opening < episode.PinnedOpening || (publish is not null && !line.Admits(window)))
            {
                continue;
            }

            var isHere = model.NewBoolVar("window");
            chosen.Add(isHere);
            positions.Add(LinearExpr.Term(isHere, window));
            ready.ForEach(moment => model.Add(moment <= line.AvailableBy(window)).OnlyEnforceIf(isHere));
            if (publish is not null)
            {
                model.Add(publish >= line.Opens(window)).OnlyEnforceIf(isHere);
            }
        }

        model.AddExactlyOne(chosen);
        ready.ForEach(moment => _ = publish is null ? null : model.Add(publish >= moment));
        var position = LinearExpr.Sum(positions);
        model.Add(position >= after + 1);
        return position;
    }
}
