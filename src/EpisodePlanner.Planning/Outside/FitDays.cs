using NodaTime;

namespace EpisodePlanner.Planning;

/// <summary>
/// Days that work at a place needs, where a day's weather lets it happen with a chance only. Dates of a plan count every day as
/// fit; this says how sure that is.
/// </summary>
/// <param name="Place">The place.</param>
/// <param name="Chance">The chance of a fit day, below 1.</param>
/// <param name="Days">The days on which the plan works there.</param>
public sealed record FitDays(Place Place, decimal Chance, ValueList<LocalDate> Days)
{
    /// <summary>The chance that all of these days are fit: pⁿ for independent days.</summary>
    public double AllFit => Math.Pow((double)Chance, Days.Count);

    /// <summary>Days that so many fit ones take on average: n ÷ p, the mean of the negative binomial distribution.</summary>
    public double MeanDays => Days.Count / (double)Chance;

    /// <summary>The chance that at least so many of some days are fit: the upper tail of the binomial distribution.</summary>
    /// <param name="open">Days on which the place is open, none fewer than are needed.</param>
    public double EnoughOf(int open)
    {
        var (p, total, term) = ((double)Chance, 0d, Math.Pow(1 - (double)Chance, open));
        for (var fit = 0; fit <= open; fit++)
        {
            total += fit >= Days.Count ? term : 0;
            term *= (open - fit) / (fit + 1d) * (p / (1 - p));
        }

        return Math.Min(1, total);
    }

    internal static ValueList<FitDays> Of(Plan plan) => plan.Request.Workshop.Places
        .Where(place => place.FitDayChance is > 0 and < 1)
        .Select(place => new FitDays(place, place.FitDayChance!.Value, DaysAt(plan, place.Id)))
        .Where(fit => fit.Days.Count > 0)
        .ToValueList();

    private static ValueList<LocalDate> DaysAt(Plan plan, Id place) => plan.Stages
        .SelectMany(stage => stage.Parts)
        .Where(part => part.Stations.Contains(place))
        .Select(part => part.Start.InZone(plan.Zone).Date)
        .Distinct()
        .Order()
        .ToValueList();
}
