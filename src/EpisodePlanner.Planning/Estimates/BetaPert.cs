namespace EpisodePlanner.Planning;

/// <summary>
/// The distribution of a quantity known by its least, likely and most value: a beta distribution stretched over
/// [low, high] with weight 4 on the likely value. Immutable.
/// </summary>
/// <remarks>
/// Mean after Malcolm, Roseboom, Clark and Fazar, Operations Research 7 (1959); shapes α = 1 + 4(m − a)/(b − a) and
/// β = 1 + 4(b − m)/(b − a), whose exact variance is (μ − a)(b − μ)/7. Where low is high the value is certain.
/// </remarks>
public sealed record BetaPert
{
    private const double Weight = 4;

    /// <summary>A distribution.</summary>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The values are not in ascending order, or one is not a number.
    /// </exception>
    public BetaPert(double low, double likely, double high)
    {
        if (!(low <= likely && likely <= high))
        {
            throw new ArgumentOutOfRangeException(nameof(likely), likely, $"Not between {low} and {high}.");
        }

        (Low, Likely, High) = (low, likely, high);
    }

    /// <summary>The least value.</summary>
    public double Low { get; }

    /// <summary>The value met most often.</summary>
    public double Likely { get; }

    /// <summary>The greatest value.</summary>
    public double High { get; }

    /// <summary>Whether there is only one value.</summary>
    public bool IsCertain => Low == High;

    /// <summary>The first shape, 1 to 5; 1 where the value is certain.</summary>
    public double Alpha => IsCertain ? 1 : 1 + (Weight * (Likely - Low) / (High - Low));

    /// <summary>The second shape, 1 to 5; 1 where the value is certain.</summary>
    public double Beta => IsCertain ? 1 : 1 + (Weight * (High - Likely) / (High - Low));

    /// <summary>The mean, (a + 4m + b)/6.</summary>
    public double Mean => (Low + (Weight * Likely) + High) / (Weight + 2);

    /// <summary>The exact variance, (μ − a)(b − μ)/7.</summary>
    public double Variance => (Mean - Low) * (High - Mean) / (Weight + 3);

    /// <summary>The value that is not exceeded with a chance.</summary>
    /// <param name="chance">The chance, 0 to 1.</param>
    public double Quantile(double chance) =>
        IsCertain ? Low : Low + ((High - Low) * MathNet.Numerics.Distributions.Beta.InvCDF(Alpha, Beta, chance));
}
