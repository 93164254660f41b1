using EpisodePlanner.Planning;
using EpisodePlanner.Proving.Bench;
using EpisodePlanner.Proving.Solving;
using EpisodePlanner.Scheduling;
using Google.OrTools.Sat;

namespace EpisodePlanner.Proving.Weights;

/// <summary>
/// The relaxation of a whole workshop with what plans are judged by, part by part, over all plans that end at most a week
/// after the known one. As a silence weighs no more after thirty days, a plan that put its last work off to the very end of
/// what is looked at would weigh less; that is no plan anybody wants, and such plans are left out.
/// </summary>
internal sealed class WeightsModel
{
    private const int Margin = 7 * 1440;

    private readonly PlanQuestion question;
    private readonly PlanAims aims;
    private readonly BenchModel bench;
    private readonly CpModel model;
    private readonly LinearExpr[] parts;

    public WeightsModel(PlanQuestion question)
    {
        (this.question, aims) = (question, question.Aims!);
        int[] all = [.. Enumerable.Range(0, question.Known.Problem.Stages.Count)];
        var limit = Math.Min(question.Known.End + Margin, question.Known.Problem.Horizon);
        bench = new BenchModel(question.Known.Problem, all, limit, BoundRules.Usual);
        model = bench.Model;
        if (bench.IsImpossible)
        {
            throw new InvalidOperationException("The plan breaks a rule, or the relaxation is none.");
        }

        var uploads = new UploadRows(question, bench);
        parts = [Lateness(uploads.All), Silence(uploads), Moves(), End(all)];
    }

    /// <summary>How many parts there are.</summary>
    public int Count => parts.Length;

    /// <summary>The least value of a part.</summary>
    public long Bound(int part, ProofLimits limits, CancellationToken stop)
    {
        model.Minimize(parts[part]);
        var answer = SolverRun.Minimize(model, limits, stop: stop);
        return answer.IsImpossible
            ? throw new InvalidOperationException("The plan breaks a rule, or the relaxation is none.")
            : Math.Max(0, answer.Bound);
    }

    /// <summary>From now on only what is as good in a part counts.</summary>
    public void Keep(int part, long value) => model.Add(parts[part] <= value);

    private LinearExpr Lateness(IReadOnlyList<UploadRow> uploads) => LinearExpr.Sum(aims.NeededBy
        .Select(date => Late(bench[date.Index].Finish, date.Minute))
        .Concat(aims.PublicBy.Select(date => Late(uploads[date.Index].Minute, date.Minute))));

    private IntVar Late(IntVar moment, int by)
    {
        var late = model.NewIntVar(0, question.Known.Problem.Horizon, "late");
        model.Add(late >= moment - by);
        return late;
    }

    private LinearExpr Silence(UploadRows uploads)
    {
        var silences = new SilenceRows(model, aims.LastDay, uploads.LatestDay);
        var weights = Enumerable.Range(0, question.Series.Count)
            .Select(s => silences.Weight(aims.Promises[s], [.. question.Series[s].Episodes.Select(e => uploads.All[e].Day)]))
            .ToList();
        var least = question.Windows.Select(window => window.Day).DefaultIfEmpty(aims.Channel.SilentFrom).Min();
        weights.Add(silences.Weight(aims.Channel, silences.Sorted([.. uploads.All.Select(upload => upload.Day)], least)));
        return LinearExpr.Sum(weights);
    }

    private LinearExpr Moves() => LinearExpr.Sum(aims.Accepted.Select(accepted =>
    {
        var moves = model.NewBoolVar("moves");
        model.Add(bench[accepted.Index].Start == accepted.Minute).OnlyEnforceIf(moves.Not());
        return LinearExpr.Affine(moves, 1, 0);
    }));

    private IntVar End(int[] all)
    {
        var end = model.NewIntVar(0, question.Known.Problem.Horizon, "end");
        foreach (var stage in all)
        {
            model.Add(end >= bench[stage].Finish);
        }

        bench.EndAfter(end, all);
        return end;
    }
}
