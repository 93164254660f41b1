namespace EpisodePlanner.Planning;

/// <summary>A story cut one way, planned as it would be, with the best slots for it.</summary>
/// <param name="Change">What makes it of the workshop.</param>
/// <param name="Drafted">The plan after it.</param>
/// <param name="Question">The slots it asks for.</param>
/// <param name="Windows">By episode of the question: the window chosen; −1 for none.</param>
/// <param name="Weights">What it is judged by: with those windows.</param>
/// <param name="AsPlanned">The same with the windows that the plan gives: the first that are free.</param>
internal sealed record StoryCandidate(
    Batch Change,
    DraftedPlan Drafted,
    SlotQuestion Question,
    ValueList<int> Windows,
    StoryWeights Weights,
    StoryWeights AsPlanned)
{
    /// <summary>Plans a workshop after a change and chooses slots.</summary>
    /// <param name="request">The plan's request, before the change.</param>
    /// <param name="change">The change.</param>
    /// <param name="through">The last day that counts.</param>
    /// <param name="stop">Ends the search within the plan.</param>
    /// <returns>The candidate; null where the change is refused.</returns>
    public static StoryCandidate? After(PlanRequest request, Batch change, int through, CancellationToken stop) =>
        Changes.Apply(request.Workshop, change) is Applied applied
            ? Of(change, Planner.Draft(request with { Workshop = applied.Workshop }, stop: stop), through)
            : null;

    /// <summary>A plan that is there, with the best slots for it.</summary>
    public static StoryCandidate Of(Batch change, DraftedPlan drafted, int through)
    {
        var question = SlotQuestions.Of(drafted, through);
        var windows = SlotChoice.Best(question, drafted.Sweep.Windows);
        var plan = drafted.Plan.Weights;
        var given = SlotWeights.Of(question, drafted.Sweep.Windows);
        return new StoryCandidate(
            change,
            drafted,
            question,
            windows.ToValueList(),
            Weigh(SlotWeights.Of(question, windows)),
            Weigh(given));

        StoryWeights Weigh(SlotWeights slots) => new(
            slots.Unpublished,
            plan.LateMinutes - given.LateMinutes + slots.LateMinutes,
            slots.Silence,
            plan.Moves,
            plan.EndMinute,
            slots.Days);
    }
}
