namespace EpisodePlanner.Planning;

/// <summary>
/// The cuts and slots over all series that together weigh least, beside the plan as the maker has cut it. The plan never
/// changes its cuts unasked: this is what could be taken.
/// </summary>
public sealed record StoryAnswer
{
    private const int WholeBudget = 9_000;
    private const int LeastPlans = 4;
    private const int MostPlans = 256;

    /// <summary>The plan it is about.</summary>
    public required Plan Plan { get; init; }

    /// <summary>The cuts that weigh least where nothing is held back; null where nothing better than the plan was found.</summary>
    public required StoryProposal? Cuts { get; init; }

    /// <summary>
    /// Cuts and slots together, where holding episodes back weighs less than the best cuts alone; null where it does not.
    /// </summary>
    public required StoryProposal? Held { get; init; }

    /// <summary>What the plan weighs as it is cut now.</summary>
    public required StoryWeights Now { get; init; }

    /// <summary>What the plan weighs once the best proposal is taken.</summary>
    public required StoryWeights Then { get; init; }

    /// <summary>The better of the two proposals; null for none.</summary>
    public StoryProposal? Best => Held ?? Cuts;

    /// <summary>How many plans were made.</summary>
    public required int Made { get; init; }

    /// <summary>Whether every way to cut that bounds, payoffs and what the maker fixed allow was planned.</summary>
    public required bool IsWhole { get; init; }

    /// <summary>What no cut and no slot can do, with the nearest that could.</summary>
    public required ValueList<Finding> Notes { get; init; }

    /// <summary>Answers for a plan.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="plans">How many plans may be made; by the size of the workshop where absent, 1 or more.</param>
    /// <param name="progress">Told the share done, 0 to 1.</param>
    /// <param name="stop">Ends the search; the best found by then is the answer.</param>
    public static StoryAnswer Of(Plan plan, int? plans = null, IProgress<double>? progress = null, CancellationToken stop = default)
    {
        var drafted = DraftedPlan.Of(plan);
        var lines = StoryLines.Of(drafted.Draft);
        var search = new CutSearch(drafted, lines, plans ?? Plans(plan), progress, stop);
        var now = search.BestAsPlanned;
        search.Run();
        var cuts = search.BestAsPlanned;
        var held = HeldBack(plan, search.Best.Candidate, search.Through, stop);
        var isHeld = held?.AsPlanned < cuts.AsPlanned;
        return new StoryAnswer
        {
            Plan = plan,
            Cuts = cuts == now ? null : Proposal(plan, StoryMove.Together, "other cuts", cuts),
            Held = isHeld ? Proposal(plan, StoryMove.TogetherHeld, "other cuts, and episodes held back", held!) : null,
            Now = now.AsPlanned,
            Then = isHeld ? held!.AsPlanned : cuts.AsPlanned,
            Made = search.Made,
            IsWhole = search.IsWhole,
            Notes = StoryNotes.Of(drafted.Draft, lines),
        };
    }

    /// <summary>How many plans are made where nobody says: fewer the larger the workshop is, the same for the same workshop.</summary>
    public static int Plans(Plan plan) => Math.Clamp(WholeBudget / Math.Max(1, plan.Stages.Count), LeastPlans, MostPlans);

    /// <summary>The same with episodes pinned to later slots, planned; null where the first free slots are as good.</summary>
    private static StoryCandidate? HeldBack(Plan plan, StoryCandidate best, int through, CancellationToken stop)
    {
        var held = HoldingBack.Of(best);
        return held.Count == 0
            ? null
            : StoryCandidate.After(plan.Request, new Batch([.. best.Change.Changes, .. held.Select(one => one.Change)]), through, stop);
    }

    private static StoryProposal Proposal(Plan plan, StoryMove move, string says, StoryCandidate best) => new()
    {
        Move = move,
        Says = says,
        Series = null,
        Change = best.Change,
        Before = plan,
        Then = best.Drafted.Plan,
    };
}
