using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Planning;

/// <summary>What can be kept up over all series with these hands and these slots.</summary>
public sealed record Cadence
{
    /// <summary>The share of kept hours to load where nobody says.</summary>
    public const decimal UsualLoading = 0.85m;

    /// <summary>The plan it is about.</summary>
    public required Plan Plan { get; init; }

    /// <summary>Hours a week.</summary>
    public required KeptHours Kept { get; init; }

    /// <summary>The share of kept hours that may be loaded, above 0 to 1.</summary>
    public required decimal Loading { get; init; }

    /// <summary>The active series, by name.</summary>
    public required ValueList<SeriesCadence> Series { get; init; }

    /// <summary>All promises together.</summary>
    public required PromisesTogether Together { get; init; }

    /// <summary>The promise that is broken first where they can't all hold, and the day; null where they can.</summary>
    public required FirstBroken? Breaks { get; init; }

    /// <summary>Promises near these that can hold, as days by series; empty where these hold or none was found.</summary>
    public required ValueList<NearerPromise> Nearest { get; init; }

    /// <summary>What resting one series openly would do, by name of the series that rests.</summary>
    public required ValueList<(Id Rests, PromisesTogether Then)> Resting { get; init; }

    /// <summary>Slots in the coming year.</summary>
    public required int SlotsAYear { get; init; }

    /// <summary>Hours a week that may be loaded.</summary>
    public decimal LoadedHours => Kept.HoursAWeek * Loading;

    /// <summary>The most uploads a week that hands can keep up, at the mean cost of an episode; null where nothing costs anything.</summary>
    public decimal? UploadsAWeek => Series.Count == 0 || Series.Average(series => series.Hours) == 0
        ? null
        : LoadedHours / Series.Average(series => series.Hours);

    /// <summary>What a plan's workshop can keep up.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="loading">The share of kept hours that may be loaded, above 0 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The loading is not above 0 and at most 1.</exception>
    public static Cadence Of(Plan plan, decimal loading = UsualLoading)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(loading);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(loading, 1);
        var (kept, slots) = (KeptHours.Of(plan), new SlotCounts(plan));
        var series = new EpisodeCosts(plan).Of(slots);
        var weighing = new PromiseWeighing(kept.HoursAWeek * loading);
        var together = weighing.Of(series);
        return new Cadence
        {
            Plan = plan,
            Kept = kept,
            Loading = loading,
            Series = series,
            Together = together,
            Breaks = together.SlotsSuffice ? null : FirstBroken.Of(plan, series),
            Nearest = together.Hold ? [] : NearerPromise.Of(series, slots, weighing),
            Resting = series.Select(rests => (rests.Series.Id, weighing.Of([.. series.Where(other => other != rests)]))).ToValueList(),
            SlotsAYear = slots.Count,
        };
    }
}

/// <summary>What episodes cost, from those to come.</summary>
/// <param name="plan">The plan.</param>
internal sealed class EpisodeCosts(Plan plan)
{
    private readonly ILookup<Id, PlannedStage> tails =
        plan.Stages.Where(stage => stage.Key.IsTail).ToLookup(stage => stage.Key.Episode);

    /// <summary>The active series with their costs.</summary>
    public ValueList<SeriesCadence> Of(SlotCounts slots)
    {
        var workshop = plan.Request.Workshop;
        var all = plan.Episodes.Select(Cost).ToList();
        return workshop.Series.Where(series => series.State == SeriesState.Active)
            .OrderBy(series => series.Name, StringComparer.Ordinal)
            .ThenBy(series => series.Id)
            .Select(series => Of(series, slots, [.. plan.Episodes.Where(e => e.Series == series.Id).Select(Cost)], all))
            .ToValueList();
    }

    private SeriesCadence Of(Series series, SlotCounts slots, List<(decimal Bench, decimal Tail)> own, List<(decimal Bench, decimal Tail)> all)
    {
        var (promise, _) = EpisodeTable.PromiseOf(plan.Request.Workshop, series);
        var days = promise.LongestSilenceDays ?? Math.Max(1, 28 / promise.UploadsPerMonth!.Value);
        var from = own.Count > 0 ? own : all;
        var usualTail = Tails.Of(plan.Request.Workshop, null).Sum(part => part.Hours);
        return new SeriesCadence
        {
            Series = series,
            Days = days,
            Slots = slots.Within(days),
            BenchHours = from.Count > 0 ? from.Average(cost => cost.Bench) : 0,
            TailHours = from.Count > 0 ? from.Average(cost => cost.Tail) : usualTail,
            Episodes = own.Count,
        };
    }

    /// <summary>Hours left of an episode. Where its tail is begun already the whole one counts, since the next will have it.</summary>
    private (decimal Bench, decimal Tail) Cost(PlannedEpisode episode)
    {
        var left = tails[episode.Id].Where(stage => stage.Kind == StageKind.Attended).Sum(stage => stage.Minutes) / 60m;
        var whole = Tails.Of(plan.Request.Workshop, plan.Request.Workshop.Episodes.Find(episode.Id)).Sum(part => part.Hours);
        return (Math.Max(0, (episode.WorkMinutes / 60m) - left), Math.Max(left, whole));
    }
}
