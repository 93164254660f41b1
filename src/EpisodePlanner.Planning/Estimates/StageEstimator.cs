namespace EpisodePlanner.Planning;

/// <summary>Makes the estimates of stages under one workshop's settings.</summary>
/// <remarks>
/// It remembers the quantile of each shape it met (stages with an assumed range share one), so make one for a plan and
/// use it from one thread.
/// </remarks>
public sealed class StageEstimator
{
    /// <summary>The low end of a range as a share of the likely length, where the settings name none.</summary>
    public const decimal AssumedLow = 0.8m;

    /// <summary>The high end of a range as a share of the likely length, where the settings name none.</summary>
    public const decimal AssumedHigh = 2m;

    /// <summary>The chance with which a run should fit before it is started.</summary>
    public const double FitChance = 0.9;

    private const int MinutesADay = 1_440;

    private readonly decimal low;
    private readonly decimal high;
    private readonly Dictionary<double, double> fitOfShape = [];

    /// <summary>An estimator.</summary>
    public StageEstimator(Settings settings)
    {
        low = settings.RangeLow ?? AssumedLow;
        high = settings.RangeHigh ?? AssumedHigh;
    }

    /// <summary>
    /// The estimate of a stage. A wait in business days is taken as told: exactly that many days.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">The range does not hold the likely length.</exception>
    public StageEstimate Of(Stage stage) => stage.BusinessDays is { } days
        ? BusinessWait(days)
        : Of(stage.Hours, stage.LowHours, stage.HighHours);

    /// <summary>The estimate of a part of an episode's tail.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The range does not hold the likely length.</exception>
    public StageEstimate Of(TailPart part) => Of(part.Hours, part.LowHours, part.HighHours);

    private StageEstimate Of(decimal likely, decimal? least, decimal? most)
    {
        var (from, to) = (least ?? likely * low, most ?? likely * high);
        var hours = new BetaPert((double)from, (double)likely, (double)to);

        // (a + 4m + b)/6 hours are (a + 4m + b) · 10 minutes, exact in decimals.
        var minutes = PlanningMinutes.Of((from + (4 * likely) + to) * 10);
        var fit = Math.Max(minutes, PlanningMinutes.Of(60 * Fit(hours)));
        return new StageEstimate(minutes, fit, least is null || most is null, false, hours);
    }

    private double Fit(BetaPert hours)
    {
        if (hours.IsCertain)
        {
            return hours.Low;
        }

        var shape = Math.Round(hours.Alpha, 12);
        if (!fitOfShape.TryGetValue(shape, out var share))
        {
            share = new BetaPert(0, (shape - 1) / 4, 1).Quantile(FitChance);
            fitOfShape.Add(shape, share);
        }

        return hours.Low + ((hours.High - hours.Low) * share);
    }

    private static StageEstimate BusinessWait(int days)
    {
        var minutes = days * MinutesADay;
        return new StageEstimate(minutes, minutes, false, true, new BetaPert(days * 24, days * 24, days * 24));
    }
}
