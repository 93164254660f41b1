using EpisodePlanner.Planning;
using EpisodePlanner.Proving.Bench;
using EpisodePlanner.Proving.Weights;
using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Proving.Publishing;

/// <summary>Proves what no plan can do: first by counting, then, where that is not enough, by a search.</summary>
public sealed class PlanProver : IPlanProver
{
    /// <inheritdoc/>
    public PublishingBound EarliestPublish(
        PlanQuestion question, int episode, ProofLimits limits, IProgress<double>? progress = null, CancellationToken stop = default)
    {
        var line = new EpisodeLine(question, episode);
        var tests = new WindowTests(line);
        var planned = line.PlannedWindow;
        var first = Enumerable.Range(0, line.Windows.Count).FirstOrDefault(window => tests.RulesOut(window) is null, -1);
        if (first < 0)
        {
            return new PublishingBound(null, WhyNot(tests, line, line.Windows.Count) ?? new PublishingBinding.Windows());
        }

        progress?.Report(0.1);
        var counted = Math.Max(line.Opens(first), tests.AvailableFrom);
        if (first >= planned || line.Stages.Count == 0)
        {
            return new PublishingBound(counted, WhyNot(tests, line, first) ?? new PublishingBinding.Windows());
        }

        using var ending = CancellationTokenSource.CreateLinkedTokenSource(stop);
        ending.CancelAfter(limits.Wall);
        var half = limits with { Work = limits.Work / 2, Wall = limits.Wall / 2 };
        return Search(line, tests, (first, planned, counted), half, progress, ending.Token);
    }

    /// <inheritdoc/>
    public WeightsBound Weigh(
        PlanQuestion question, ProofLimits limits, IProgress<double>? progress = null, CancellationToken stop = default)
    {
        var known = question.Aims?.Reached.InOrder
            ?? throw new ArgumentException("The plan leaves something without a date.", nameof(question));
        var model = new WeightsModel(question);
        var bounds = new List<long>();
        for (var part = 0; part < known.Count && (part == 0 || bounds[^1] == known[part - 1]); part++)
        {
            progress?.Report((double)part / known.Count);
            if (part > 0)
            {
                model.Keep(part - 1, known[part - 1]);
            }

            bounds.Add(Math.Min(known[part], model.Bound(part, limits, stop)));
        }

        return new WeightsBound(bounds.ToValueList());
    }

    private static PublishingBound Search(
        EpisodeLine line,
        WindowTests tests,
        (int First, int Planned, int Minute) counted,
        ProofLimits limits,
        IProgress<double>? progress,
        CancellationToken stop)
    {
        var found = new PublishingModel(line, counted.First, counted.Planned, BoundRules.Usual).Bound(limits, stop);
        progress?.Report(0.5);
        var minute = Math.Max(counted.Minute, found ?? int.MaxValue);
        if (line.FirstOpenAt(minute, counted.First) is not { } window)
        {
            return new PublishingBound(null, WhyNot(tests, line, line.Windows.Count) ?? tests.Chain());
        }

        var binding = window == counted.First ? WhyNot(tests, line, window)
            : WhyNot(tests, line, window) ?? Together(line, tests, (counted.First, window), limits, progress, stop);
        return new PublishingBound(Math.Max(minute, line.Opens(window)), binding ?? new PublishingBinding.Windows());
    }

    /// <summary>What rules out the last window before one; null where counting does not.</summary>
    private static PublishingBinding? WhyNot(WindowTests tests, EpisodeLine line, int window)
    {
        for (var before = window - 1; before >= 0; before--)
        {
            if (line.Admits(before))
            {
                return tests.RulesOut(before);
            }
        }

        return new PublishingBinding.Windows();
    }

    /// <summary>Leaves out station after station while the earlier windows stay impossible.</summary>
    private static PublishingBinding Together(
        EpisodeLine line,
        WindowTests tests,
        (int First, int Bound) windows,
        ProofLimits limits,
        IProgress<double>? progress,
        CancellationToken stop)
    {
        var stations = tests.Stations;
        var relaxed = new HashSet<int>();
        var each = limits with { Work = limits.Work / stations.Count, Wall = limits.Wall / stations.Count };
        for (var i = 0; i < stations.Count && !stop.IsCancellationRequested; i++)
        {
            var rules = new BoundRules { RelaxedStations = relaxed.Append(stations[i]).ToHashSet() };
            var bound = new PublishingModel(line, windows.First, windows.Bound, rules).Bound(each, stop);
            if (bound is null || line.FirstOpenAt(bound.Value, windows.First) >= windows.Bound)
            {
                relaxed.Add(stations[i]);
            }

            progress?.Report(0.5 + (0.5 * (i + 1) / stations.Count));
        }

        var binding = stations.Where(station => !relaxed.Contains(station)).Order().ToList();
        return binding.Count == 0 ? tests.Chain() : new PublishingBinding.Together(binding.ToValueList());
    }
}
