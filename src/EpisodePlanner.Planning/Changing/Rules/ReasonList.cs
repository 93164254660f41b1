namespace EpisodePlanner.Planning;

/// <summary>Reasons as they are found.</summary>
internal sealed class ReasonList
{
    private readonly List<Reason> reasons = [];

    /// <summary>Whether nothing was found.</summary>
    public bool IsEmpty => reasons.Count == 0;

    /// <summary>Notes what is wrong at a spot and what would be right.</summary>
    public void Add(Spot where, string says) => reasons.Add(new Reason(where.ToString(), says));

    /// <summary>What was found, in the order in which it was found.</summary>
    public ValueList<Reason> ToValueList() => reasons.ToValueList();
}
