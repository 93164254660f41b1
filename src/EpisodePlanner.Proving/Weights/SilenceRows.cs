using EpisodePlanner.Planning;
using Google.OrTools.Sat;

namespace EpisodePlanner.Proving.Weights;

/// <summary>
/// Weighs silences: the least over all ways to hold back what is ready, which is never more than
/// <see cref="HeldBack.Weight"/> says.
/// </summary>
/// <param name="model">The model.</param>
/// <param name="lastDay">The last day of the plan.</param>
/// <param name="latestDay">The last day on which anything goes out.</param>
internal sealed class SilenceRows(CpModel model, int lastDay, int latestDay)
{
    private static readonly long[] Squares =
        [.. Enumerable.Range(0, SilencePenalty.MostDays + 1).Select(days => SilencePenalty.Weight(days))];

    /// <summary>The weight of the silences between uploads in their order, from the last one made to the end of the plan.</summary>
    public LinearExpr Weight(AskedPromise promise, IReadOnlyList<IntVar> days)
    {
        if (promise.LongestSilence is not { } longest)
        {
            return LinearExpr.Constant(0);
        }

        var weights = new List<LinearExpr>();
        LinearExpr before = model.NewConstant(promise.SilentFrom);
        for (var i = 0; i < days.Count; i++)
        {
            var held = model.NewIntVar(promise.SilentFrom, Math.Max(promise.SilentFrom, Math.Min(lastDay, latestDay)), "held");
            model.Add(held >= before);
            AtLeast(held, days[i]);
            if (i == days.Count - 1)
            {
                // The last one is not held back; days before the first silence and after the plan count as its ends.
                model.Add(held <= LatestOf(days[i], before));
            }

            weights.Add(Ended(held - before - longest));
            before = held;
        }

        weights.Add(Open(Beyond(lastDay - longest - before)).Weight);
        return LinearExpr.Sum(weights);
    }

    /// <summary>The same days in ascending order.</summary>
    public IReadOnlyList<IntVar> Sorted(IReadOnlyList<IntVar> days, int from)
    {
        var sorted = days.Select(_ => model.NewIntVar(from, latestDay, "sorted")).ToList();
        var places = days.Select(_ => sorted.Select(_ => model.NewBoolVar("place")).ToList()).ToList();
        for (var i = 0; i < days.Count; i++)
        {
            model.AddExactlyOne(places[i]);
            model.AddExactlyOne(places.Select(row => row[i]));
            for (var k = 0; k < sorted.Count; k++)
            {
                model.Add(sorted[k] == days[i]).OnlyEnforceIf(places[i][k]);
            }
        }

        foreach (var (one, two) in sorted.Zip(sorted.Skip(1)))
        {
            model.Add(two >= one);
        }

        return sorted;
    }

    /// <summary>Held until a day; what lies after the plan counts as its last day.</summary>
    private void AtLeast(IntVar held, IntVar day)
    {
        var within = model.NewIntVar(-1_000_000, lastDay, "within");
        model.AddMinEquality(within, [day, model.NewConstant(lastDay)]);
        model.Add(held >= within);
    }

    private IntVar LatestOf(IntVar day, LinearExpr before)
    {
        var latest = model.NewIntVar(-1_000_000, 1_000_000, "latest");
        model.AddMaxEquality(latest, [day, before]);
        return latest;
    }

    private IntVar Beyond(LinearExpr days)
    {
        var positive = model.NewIntVar(0, 10_000_000, "beyond");
        model.AddMaxEquality(positive, [days, LinearExpr.Constant(0)]);
        return positive;
    }

    /// <summary>A silence that nothing ends: the square of its days beyond, these taken as at most the flattening ones.</summary>
    private (IntVar Days, IntVar Weight) Open(IntVar beyond)
    {
        var days = model.NewIntVar(0, SilencePenalty.MostDays, "days");
        model.AddMinEquality(days, [beyond, LinearExpr.Constant(SilencePenalty.MostDays)]);
        var weight = model.NewIntVar(0, Squares[^1], "weight");
        model.AddElement(days, Squares, weight);
        return (days, weight);
    }

    /// <summary>A silence that an upload ends: the square, then a line.</summary>
    private LinearExpr Ended(LinearExpr silence)
    {
        var beyond = Beyond(silence);
        var (days, weight) = Open(beyond);
        return weight + (SilencePenalty.PerDayMore * (beyond - days));
    }
}
