namespace EpisodePlanner.Planning;

/// <summary>
/// What some episodes of a series cost, to be added up along the series; compared in this order: misfit, minutes late,
/// weight of silences, number of episodes (each costs a tail), sum of the days until they are out.
/// </summary>
/// <remarks>Packed into two numbers, as millions of them are compared; parts beyond their bits count as the most these hold.</remarks>
internal readonly struct CutCost
{
    private const int LateBits = 36;
    private const int MisfitBits = 26;
    private const int DayBits = 22;
    private const int EpisodeBits = 10;
    private const int SilenceBits = 30;

    private readonly long first;
    private readonly long second;

    private CutCost(long first, long second) => (this.first, this.second) = (first, second);

    /// <summary>Costs of one episode.</summary>
    /// <param name="misfit">By how much it is out of the series' bounds, 0 or more.</param>
    /// <param name="late">Minutes by which told dates and pinned slots are missed, 0 or more.</param>
    /// <param name="days">Days until it is out, 0 or more.</param>
    public static CutCost OfEpisode(long misfit, long late, long days) => new(
        (Most(misfit, MisfitBits) << LateBits) + Most(late, LateBits), (1L << DayBits) + Most(days, DayBits));

    /// <summary>No way.</summary>
    public static CutCost None { get; } = new(long.MaxValue, long.MaxValue);

    /// <summary>Whether it is a way at all.</summary>
    public bool IsWay => first < long.MaxValue;

    /// <summary>Whether it comes before another.</summary>
    public bool IsLessThan(in CutCost other) => first < other.first || (first == other.first && second < other.second);

    /// <summary>The same with silences more.</summary>
    public CutCost WithSilence(long weight) => new(first, second + (Most(weight, SilenceBits) << (DayBits + EpisodeBits)));

    /// <summary>Both together.</summary>
    public CutCost Plus(in CutCost other) => new(first + other.first, second + other.second);

    private static long Most(long value, int bits) => Math.Clamp(value, 0, (1L << (bits - 1)) - 1);
}
