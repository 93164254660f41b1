using System.Globalization;
using EpisodePlanner.Planning;

namespace EpisodePlanner.Web.Telling;

/// <summary>What can be kept up, in words that a line and a table share.</summary>
internal sealed class CadenceWords(Cadence cadence)
{
    /// <summary>How things of the plan are called.</summary>
    public PlanNames Names { get; } = new(cadence.Plan);

    /// <summary>Where the hours come from.</summary>
    public string Kept => cadence.Kept.Assumed
        ? $"Hands are free {Hours(cadence.Kept.HoursAWeek)} a week; the log is too short to say how much of it is kept, so all of it is taken."
        : $"Of {Hours(cadence.Kept.OpenHoursAWeek)} a week that hands are free, {Hours(cadence.Kept.HoursAWeek)} were kept{Share}, by the log of {cadence.Kept.Weeks} weeks.";

    /// <summary>How many uploads that carries.</summary>
    public string Rate => cadence.UploadsAWeek is not { } rate
        ? "No series is active, so nothing is asked of these hours."
        : $"Loaded to {Percent(cadence.Loading)}, {Hours(cadence.LoadedHours)} a week, they carry {Often(rate)}, at {Hours(cadence.Series.Average(s => s.Hours))} for an episode on average.";

    /// <summary>Whether the promises hold together.</summary>
    public string Verdict
    {
        get
        {
            var together = cadence.Together;
            var hands = $"{Hours(together.HoursAWeek)} a week of {Hours(cadence.LoadedHours)}";
            return (together.SlotsSuffice, together.HandsSuffice) switch
            {
                (true, true) => $"All promises can hold: they ask for {hands}.",
                (true, false) => $"There are slots enough, but not hands: the promises ask for {hands}.",
                (false, true) => $"Hands would do ({hands}), but {Slots}.",
                _ => $"The promises ask for {hands}, and {Slots}.",
            };
        }
    }

    /// <summary>Whose promise is broken first; null where slots suffice.</summary>
    public string? Breaks => cadence.Breaks is { } broken
        ? $"With every slot given to whoever is due first, {Names.Series(broken.Series)} breaks its promise first, after {Names.Day(broken.Due)}."
        : null;

    /// <summary>The rotation in names, one turn after the other.</summary>
    public string? Rotation => cadence.Together.Rotation.Count > 0
        ? string.Join(", ", cadence.Together.Rotation.Select(Names.Series))
        : null;

    /// <summary>Promises that would hold.</summary>
    public string? Nearest => cadence.Nearest.Count == 0
        ? null
        : $"The nearest promises found that hold together: {string.Join(", ", cadence.Nearest.Select(Say))}.";

    /// <summary>What a series costs.</summary>
    public static string Cost(SeriesCadence series) =>
        $"{Hours(series.Hours)} an episode ({Hours(series.BenchHours)} bench, {Hours(series.TailHours)} tail{From(series)})";

    /// <summary>What a series' promise asks for.</summary>
    public static string Asks(SeriesCadence series) =>
        $"{Words.Days(series.Days)} at most{(series.Slots > 0 ? $", one of any {series.Slots} slots" : ", less than two slots are apart")}: {Hours(series.HoursAWeek)} a week";

    /// <summary>What resting a series would do.</summary>
    public string Say((Id Rests, PromisesTogether Then) resting) =>
        $"{Names.Series(resting.Rests)} rests: the others ask for {Hours(resting.Then.HoursAWeek)} a week"
        + $"{(resting.Then.Hold ? " and can all hold" : resting.Then.SlotsSuffice ? ", more than hands can do" : ", and still can't all hold on these slots")}.";

    /// <summary>"7.5 h".</summary>
    public static string Hours(decimal hours) => string.Create(CultureInfo.InvariantCulture, $"{decimal.Round(hours, 1):0.#} h");

    private string Say(NearerPromise promise) => promise.More == 0
        ? $"{Names.Series(promise.Series)} as it is"
        : $"{Names.Series(promise.Series)} {Words.Days(promise.Days)} ({Words.Days(promise.More)} more)";

    private string Slots => cadence.SlotsAYear < 2
        ? "the channel has no slots to give"
        : cadence.Together.NoRotation
            ? "no order of turns on these slots keeps them all"
            : "no order of turns was found that keeps them all";

    private string Share => cadence.Kept.Share is { } share ? $" ({Percent(share)})" : "";

    private static string From(SeriesCadence series) => series.Episodes > 0 ? "" : ", as other series'";

    private static string Percent(decimal share) => string.Create(CultureInfo.InvariantCulture, $"{share * 100:0} %");

    private static string Often(decimal aWeek) => aWeek >= 1
        ? string.Create(CultureInfo.InvariantCulture, $"{decimal.Round(aWeek, 1):0.#} uploads a week")
        : aWeek > 0 ? $"an upload every {Words.Days((int)decimal.Ceiling(7 / aWeek))}" : "no upload";
}
