namespace EpisodePlanner.Planning;

/// <summary>
/// Searches for the cuts of all series that together weigh least, each judged by a plan made for it. Few enough ways are
/// all tried. Else schedule and story take turns: the plan gives ready times, these give the best cuts for each series by
/// <see cref="CutDynamic"/>, and these the next plan; at most eight times, or until a story comes again. Then single cuts
/// are set, taken away and moved with what is left of the budget.
/// </summary>
internal sealed class CutSearch
{
    private const int MostRounds = 8;

    /// <summary>Beyond so many ways a search finds good ones sooner than a list of all.</summary>
    private const int MostListed = 4096;

    private readonly PlanRequest request;
    private readonly IReadOnlyList<StoryLine> lines;
    private readonly int budget;
    private readonly IProgress<double>? progress;
    private readonly CancellationToken stop;

    /// <summary>Only the cuts: the plans of many would fill the memory.</summary>
    private readonly HashSet<ValueList<StoryCuts>> tried = [];

    /// <summary>Prepares a search.</summary>
    /// <param name="drafted">The plan as it is cut now.</param>
    /// <param name="lines">The series of that plan, in its order.</param>
    /// <param name="budget">How many plans may be made, 1 or more.</param>
    /// <param name="progress">Told the share of the budget that is used.</param>
    /// <param name="stop">Ends the search; the best so far is the answer.</param>
    public CutSearch(
        DraftedPlan drafted, IReadOnlyList<StoryLine> lines, int budget, IProgress<double>? progress, CancellationToken stop)
    {
        (request, this.lines, this.budget, this.progress, this.stop) = (drafted.Plan.Request, lines, budget, progress, stop);
        Through = SilencePenalty.DayNumber(drafted.Draft.Axis.DateOf(drafted.Draft.Axis.Horizon));
        Now = lines.Select(line => line.Now).ToValueList();
        Best = (Now, StoryCandidate.Of(new Batch([]), drafted, Through));
        BestAsPlanned = Best.Candidate;
        tried.Add(Now);
    }

    /// <summary>The last day that counts, for all plans alike.</summary>
    public int Through { get; }

    /// <summary>As the maker cuts now.</summary>
    public ValueList<StoryCuts> Now { get; }

    /// <summary>The best found where nothing is held back.</summary>
    public StoryCandidate BestAsPlanned { get; private set; }

    /// <summary>The best found where episodes may be held back: by series its cuts, and what they give.</summary>
    public (ValueList<StoryCuts> Cuts, StoryCandidate Candidate) Best { get; private set; }

    /// <summary>How many plans were made.</summary>
    public int Made { get; private set; }

    /// <summary>Whether every way that bounds, payoffs and what stays allow was planned.</summary>
    public bool IsWhole { get; private set; }

    private bool MayGoOn => Made < budget && !stop.IsCancellationRequested;

    /// <summary>Searches.</summary>
    public void Run()
    {
        if (CutEnumeration.OfAll(lines, Math.Min(budget, MostListed)) is { } all)
        {
            foreach (var way in all.TakeWhile(_ => !stop.IsCancellationRequested))
            {
                Try(way);
            }

            IsWhole = !stop.IsCancellationRequested;
            return;
        }

        TakeTurns();
        Improve();
    }

    private void TakeTurns()
    {
        var (cuts, candidate) = Best;
        for (var round = 0; round < MostRounds && MayGoOn; round++)
        {
            var next = Next(cuts, candidate);
            if (Try(next) is not { } then)
            {
                break;
            }

            (cuts, candidate) = (next, then);
        }
    }

    /// <summary>
    /// The best cuts of each series for the ready times of a plan, all others as that plan has them. That each sees what
    /// was chosen just before it was tried and is worse: ready times don't know yet that all of them add work.
    /// </summary>
    private static ValueList<StoryCuts> Next(ValueList<StoryCuts> cuts, StoryCandidate candidate)
    {
        var (drafted, question) = (candidate.Drafted, candidate.Question);
        var planned = StoryLines.Of(drafted.Draft);
        var done = ReadyGuess.Done(drafted.Plan);
        return planned.Select((line, series) =>
        {
            if (line.Units.Count < 2)
            {
                return cuts[series];
            }

            var others = SeriesTurns.Others(question, series, candidate.Windows);
            return new CutDynamic(line, new ReadyGuess(drafted, done, line), question, series, others).Best() ?? cuts[series];
        }).ToValueList();
    }

    private void Improve()
    {
        for (var isBetter = true; isBetter && MayGoOn;)
        {
            isBetter = false;
            var from = Best.Candidate.Weights;
            foreach (var neighbour in Neighbours(Best).TakeWhile(_ => MayGoOn))
            {
                Try(neighbour);
                if (Best.Candidate.Weights < from)
                {
                    isBetter = true;
                    break;
                }
            }
        }
    }

    /// <summary>The stories with one cut set, taken away or moved; those of the series that weighs most first.</summary>
    private IEnumerable<ValueList<StoryCuts>> Neighbours((ValueList<StoryCuts> Cuts, StoryCandidate Candidate) from)
    {
        var (question, windows) = (from.Candidate.Question, from.Candidate.Windows);
        var order = Enumerable.Range(0, lines.Count)
            .OrderByDescending(series => SlotWeights.SilenceOf(question, series, windows.AsSpan()))
            .ToList();
        foreach (var series in order)
        {
            foreach (var own in Neighbours(lines[series], from.Cuts[series]).Where(lines[series].Allows))
            {
                yield return from.Cuts.Select((other, i) => i == series ? own : other).ToValueList();
            }
        }
    }

    private static IEnumerable<StoryCuts> Neighbours(StoryLine line, StoryCuts cuts)
    {
        for (var unit = 0; unit < line.Units.Count; unit++)
        {
            if (line.MustEndAfter(unit))
            {
                continue;
            }

            var turned = cuts.With(unit, !cuts.EndsAfter[unit]);
            yield return turned;
            for (var other = unit + 1; other < line.Units.Count && !line.MustEndAfter(other); other++)
            {
                if (cuts.EndsAfter[other] != cuts.EndsAfter[unit])
                {
                    yield return turned.With(other, cuts.EndsAfter[unit]);
                }
            }
        }
    }

    /// <summary>Plans a story, once; null where it was planned before, or its change is refused.</summary>
    private StoryCandidate? Try(ValueList<StoryCuts> cuts)
    {
        if (!tried.Add(cuts))
        {
            return null;
        }

        var changes = lines.Zip(cuts, (line, own) => CutChanges.Of(request.Workshop, line, own)).SelectMany(change => change);
        var candidate = StoryCandidate.After(request, new Batch(changes.ToValueList()), Through, stop);
        Made++;
        progress?.Report(Math.Min(1, (double)Made / budget));
        if (candidate is not null && candidate.Weights < Best.Candidate.Weights)
        {
            Best = (cuts, candidate);
        }

        if (candidate is not null && candidate.AsPlanned < BestAsPlanned.AsPlanned)
        {
            BestAsPlanned = candidate;
        }

        return candidate;
    }
}
