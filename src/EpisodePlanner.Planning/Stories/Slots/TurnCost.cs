namespace EpisodePlanner.Planning;

/// <summary>What some uploads of a series cost, to be added up along the series; compared in this order.</summary>
/// <param name="LateMinutes">Minutes late.</param>
/// <param name="Silence">The weight of silences.</param>
/// <param name="Days">Days until they are out.</param>
internal readonly record struct TurnCost(long LateMinutes, long Silence, long Days) : IComparable<TurnCost>
{
    /// <summary>No way.</summary>
    public static readonly TurnCost None = new(long.MaxValue, 0, 0);

    public bool IsWay => LateMinutes < long.MaxValue;

    public int CompareTo(TurnCost other)
    {
        var late = LateMinutes.CompareTo(other.LateMinutes);
        var silence = late != 0 ? late : Silence.CompareTo(other.Silence);
        return silence != 0 ? silence : Days.CompareTo(other.Days);
    }

    public TurnCost Plus(long late, long silence, long days) => new(LateMinutes + late, Silence + silence, Days + days);
}
