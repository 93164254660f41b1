using NodaTime;

namespace EpisodePlanner.Planning;

/// <summary>Weighs promises against slots and hands.</summary>
/// <param name="hoursAWeek">Hours a week that may be loaded.</param>
internal sealed class PromiseWeighing(decimal hoursAWeek)
{
    /// <summary>Series whose promises are weighed together.</summary>
    public PromisesTogether Of(IReadOnlyList<SeriesCadence> series) => Of(series, [.. series.Select(s => s.Slots)], [.. series.Select(s => s.Days)]);

    /// <summary>The same with other promises.</summary>
    public PromisesTogether Of(
        IReadOnlyList<SeriesCadence> series, IReadOnlyList<int> slots, IReadOnlyList<int> days, int mostStates = Pinwheel.UsualStates)
    {
        var hours = series.Select((s, i) => s.Hours * 7 / days[i]).Sum();
        var turns = slots.Any(count => count < 1) ? new PinwheelResult.Impossible() : Pinwheel.Solve(slots, mostStates);
        return new PromisesTogether
        {
            Rotation = turns is PinwheelResult.Holds holds ? holds.Rotation.Select(turn => series[turn].Series.Id).ToValueList() : [],
            SlotsSuffice = turns is PinwheelResult.Holds,
            NoRotation = turns is PinwheelResult.Impossible,
            HoursAWeek = hours,
            HandsSuffice = hours <= hoursAWeek,
        };
    }
}

/// <summary>The promise that is broken first, even if every slot goes to the most urgent series and all work were done.</summary>
/// <param name="Series">The series.</param>
/// <param name="Due">The last day within its promise.</param>
public sealed record FirstBroken(Id Series, LocalDate Due)
{
    private const int Year = 366;

    /// <summary>Gives every slot of the coming year to the series that is due first; the first that comes too late, or null.</summary>
    internal static FirstBroken? Of(Plan plan, IReadOnlyList<SeriesCadence> series)
    {
        var axis = new TimeAxis(plan.Request.PlannedAt, plan.Zone, Year * 1440);
        var due = series.ToDictionary(s => s.Series.Id, s => DueOf(plan, s));
        foreach (var window in SlotWindows.Of(PlanDraft.SlotRulesOf(plan.Request.Workshop), plan.Request.Workshop.Settings.DaysToAvoid, axis))
        {
            var day = window.LocalOpening.Date;
            if (due.OrderBy(d => d.Value).ThenBy(d => d.Key).FirstOrDefault(d => d.Value < day) is { Key.IsEmpty: false } broken)
            {
                return new FirstBroken(broken.Key, broken.Value);
            }

            if (series.Where(s => window.Admits(s.Series.Id)).MinBy(s => (due[s.Series.Id], s.Series.Id)) is { } next)
            {
                due[next.Series.Id] = day.PlusDays(next.Days);
            }
        }

        return null;
    }

    private static LocalDate DueOf(Plan plan, SeriesCadence series)
    {
        var last = UploadDays.OfSeries(plan.Request.Workshop, series.Series.Id).Where(day => day <= plan.Now.Date).LastOrDefault(plan.Now.Date);
        return LocalDate.Max(plan.Now.Date, last.PlusDays(series.Days));
    }
}

/// <summary>A promise that would hold together with the others.</summary>
/// <param name="Series">The series.</param>
/// <param name="Days">Its longest silence then, days.</param>
/// <param name="More">How many days more than it promises now; 0 where it stays.</param>
public sealed record NearerPromise(Id Series, int Days, int More)
{
    private const int MostSlotsMore = 24;

    /// <summary>Many ways are tried, and a rotation that takes long to find is no near one.</summary>
    private const int FewStates = 20_000;

    /// <summary>
    /// Lengthens the promises by as few slots together as it finds; of several such ways the one that leaves hands most
    /// time. Empty where none was found.
    /// </summary>
    internal static ValueList<NearerPromise> Of(IReadOnlyList<SeriesCadence> series, SlotCounts slots, PromiseWeighing weighing)
    {
        for (var more = 1; more <= MostSlotsMore; more++)
        {
            var best = Lengthened(series, slots, more)
                .Select(days => (Days: days, Then: weighing.Of(series, [.. days.Select(slots.Within)], days, FewStates)))
                .Where(way => way.Then.Hold)
                .OrderBy(way => way.Then.HoursAWeek)
                .FirstOrDefault();
            if (best.Days is { } found)
            {
                return series.Select((s, i) => new NearerPromise(s.Series.Id, found[i], found[i] - s.Days)).ToValueList();
            }
        }

        return [];
    }

    /// <summary>Every way to share so many slots among the series, for few; for many, shares that are as even as can be.</summary>
    private static IEnumerable<int[]> Lengthened(IReadOnlyList<SeriesCadence> series, SlotCounts slots, int more)
    {
        var shares = more <= 4 || series.Count <= 2
            ? Shares(series.Count, more)
            : Enumerable.Range(0, series.Count).Select(first => Even(series.Count, more, first));
        return shares.Select(share => series.Select((s, i) => slots.DaysFor(Math.Max(0, s.Slots) + share[i], s.Days)).ToArray());
    }

    private static IEnumerable<int[]> Shares(int count, int more)
    {
        if (count == 1)
        {
            return [[more]];
        }

        return Enumerable.Range(0, more + 1).SelectMany(own => Shares(count - 1, more - own), (own, rest) => (int[])[own, .. rest]);
    }

    private static int[] Even(int count, int more, int first) =>
        [.. Enumerable.Range(0, count).Select(i => (more / count) + ((i - first + count) % count < more % count ? 1 : 0))];
}
