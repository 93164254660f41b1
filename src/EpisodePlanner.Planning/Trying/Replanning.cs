namespace EpisodePlanner.Planning;

/// <summary>Plans again after a change: what a change is worth is measured, never guessed.</summary>
public static class Replanning
{
    /// <summary>
    /// The plan that the same request gives after a change, made from nothing but the changed workshop.
    /// </summary>
    /// <param name="plan">The plan before.</param>
    /// <param name="change">The change; made by <see cref="Changes.Apply"/>.</param>
    /// <param name="stop">Ends the search for something better.</param>
    /// <returns>The plan after it; null where the change is refused.</returns>
    public static Plan? After(Plan plan, Change change, CancellationToken stop = default) =>
        Changes.Apply(plan.Request.Workshop, change) is Applied applied
            ? Planner.Make(plan.Request with { Workshop = applied.Workshop }, stop: stop)
            : null;
}
