namespace EpisodePlanner.Planning.Tests;

public sealed class BetaPertTests
{
    /// <summary>
    /// checks §3: mean after Malcolm et al. 1959, Operations Research 7; shapes and variance [M]; quantiles as printed
    /// there to six places.
    /// </summary>
    [Theory]
    [InlineData(2, 3.5, 8, 2, 4, 4, 8.0 / 7, 3.882861, 4.941154, 5.503342)]
    [InlineData(5, 8, 17, 2, 4, 9, 32.0 / 7, 8.765722, 10.882308, 12.006684)]
    [InlineData(1, 2, 9, 1.5, 4.5, 3, 12.0 / 7, 2.768959, 4.102761, 4.871226)]
    public void Values_PublishedTable_Agree(
        double low, double likely, double high,
        double alpha, double beta, double mean, double variance, double median, double p80, double p90)
    {
        var pert = new BetaPert(low, likely, high);

        Assert.Equal(alpha, pert.Alpha, 1e-12);
        Assert.Equal(beta, pert.Beta, 1e-12);
        Assert.Equal(mean, pert.Mean, 1e-12);
        Assert.Equal(variance, pert.Variance, 1e-12);
        Assert.Equal(median, pert.Quantile(0.5), 1e-6);
        Assert.Equal(p80, pert.Quantile(0.8), 1e-6);
        Assert.Equal(p90, pert.Quantile(0.9), 1e-6);
    }

    /// <summary>The path variance that textbooks use, ((b − a)/6)², is another number: checks §3.</summary>
    [Theory]
    [InlineData(2, 3.5, 8, 1)]
    [InlineData(5, 8, 17, 4)]
    [InlineData(1, 2, 9, 1.777778)]
    public void Variance_Exact_IsNotTheTextbookApproximation(double low, double likely, double high, double textbook)
    {
        Assert.Equal(textbook, Math.Pow((high - low) / 6, 2), 1e-6);
        Assert.NotEqual(textbook, new BetaPert(low, likely, high).Variance, 1e-3);
    }

    [Fact]
    public void Quantile_OneValueOnly_IsCertain()
    {
        var pert = new BetaPert(3, 3, 3);

        Assert.True(pert.IsCertain);
        Assert.Equal((3, 0, 3, 3), (pert.Mean, pert.Variance, pert.Quantile(0), pert.Quantile(0.9)));
    }

    [Theory]
    [InlineData(1, 1, 5)]
    [InlineData(1, 5, 5)]
    [InlineData(0, 0.5, 1)]
    public void Quantile_AnyChance_RisesFromLowToHigh(double low, double likely, double high)
    {
        var pert = new BetaPert(low, likely, high);
        var values = Enumerable.Range(0, 21).Select(i => pert.Quantile(i / 20.0)).ToList();

        Assert.Equal(low, values[0], 1e-9);
        Assert.Equal(high, values[^1], 1e-9);
        Assert.All(values.Zip(values.Skip(1)), pair => Assert.True(pair.First < pair.Second));
    }

    [Theory]
    [InlineData(2, 1, 3)]
    [InlineData(1, 4, 3)]
    [InlineData(double.NaN, 1, 3)]
    public void Constructor_ValuesOutOfOrder_AreRefused(double low, double likely, double high) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new BetaPert(low, likely, high));
}
