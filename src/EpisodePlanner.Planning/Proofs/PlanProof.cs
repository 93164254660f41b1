namespace EpisodePlanner.Planning;

/// <summary>What a whole plan is judged by, the weightiest first.</summary>
public enum WeightPart
{
    /// <summary>Minutes by which told dates, needed-by dates and pinned slots are missed.</summary>
    Late,

    /// <summary>Days of silence beyond promises, squared and added.</summary>
    Silence,

    /// <summary>Stages that leave the accepted start of the next seven days.</summary>
    Moves,

    /// <summary>The end of the work, minutes from planning.</summary>
    End,
}

/// <summary>
/// How much better than a plan any other could be that does the same work, gives every episode a date and ends at most a
/// week after it.
/// </summary>
public sealed record PlanProof
{
    /// <summary>
    /// In the order of <see cref="WeightPart"/>. Each speaks about plans that are as good as this one in all parts before, so
    /// that the list ends with the first part in which a better one may exist.
    /// </summary>
    public required ValueList<PartProof> Parts { get; init; }

    /// <summary>Whether no plan is better.</summary>
    public bool IsBest => Parts.Count == Enum.GetValues<WeightPart>().Length && Parts.All(part => part.IsReached);
}

/// <summary>How little a part of a plan can weigh.</summary>
/// <param name="Part">The part.</param>
/// <param name="Reached">What it weighs in the plan, 0 or more.</param>
/// <param name="Bound">No plan weighs less, 0 to <paramref name="Reached"/>.</param>
public sealed record PartProof(WeightPart Part, long Reached, long Bound)
{
    /// <summary>Whether nothing can be won here.</summary>
    public bool IsReached => Bound >= Reached;

    /// <summary>No plan wins more than this.</summary>
    public long MostToWin => Reached - Bound;
}
