namespace EpisodePlanner.Planning;

/// <summary>What some episodes of a series cost, to be added up along the series; compared in this order.</summary>
/// <param name="Misfit">By how much they are out of the series' bounds.</param>
/// <param name="Late">Minutes by which told dates and pinned slots are missed.</param>
/// <param name="Silence">The weight of silences.</param>
/// <param name="Episodes">How many: each costs a tail.</param>
/// <param name="Days">Sum of the days until they are out.</param>
internal readonly record struct CutCost(long Misfit, long Late, long Silence, int Episodes, long Days)
{
    /// <summary>No way.</summary>
    public static readonly CutCost None = new(long.MaxValue, 0, 0, 0, 0);

    public bool IsWay => Misfit < long.MaxValue;

    public bool IsLessThan(in CutCost other)
    {
        if (Misfit != other.Misfit)
        {
            return Misfit < other.Misfit;
        }

        if (Late != other.Late)
        {
            return Late < other.Late;
        }

        if (Silence != other.Silence)
        {
            return Silence < other.Silence;
        }

        return Episodes != other.Episodes ? Episodes < other.Episodes : Days < other.Days;
    }

    public CutCost Plus(in CutCost other) => new(
        Misfit + other.Misfit, Late + other.Late, Silence + other.Silence, Episodes + other.Episodes, Days + other.Days);
}
