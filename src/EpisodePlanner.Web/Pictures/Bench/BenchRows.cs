using EpisodePlanner.Planning;
using EpisodePlanner.Scheduling;
using NodaTime;

namespace EpisodePlanner.Web.Pictures;

/// <summary>Sorts a plan into the rows of the bench.</summary>
public sealed class BenchRows
{
    private const int Day = 1440;
    private const int Noon = 720;

    private readonly Plan plan;
    private readonly BenchView view;
    private readonly Instant from;
    private readonly Instant until;
    private readonly Dictionary<(int Row, string Lane), List<Bar>> hands = [];
    private readonly Dictionary<(int Row, string Lane), List<Bar>> machines = [];

    private BenchRows(Plan plan, BenchView view)
    {
        (this.plan, this.view) = (plan, view);
        (from, until) = (NoonOf(view.FirstDay), NoonOf(view.FirstDay.PlusDays(view.Days)));
    }

    /// <summary>The rows of a view.</summary>
    public static ValueList<BenchRow> Of(Plan plan, BenchView view)
    {
        var rows = new BenchRows(plan, view);
        foreach (var stage in plan.Stages)
        {
            rows.Add(stage);
        }

        var open = rows.Presence();
        var (hands, machines) = (ByRow(rows.hands), ByRow(rows.machines));
        return Enumerable.Range(0, view.Days).Select(row => rows.Row(row, hands, machines, open)).ToValueList();
    }

    /// <summary>Wall-clock minutes of a moment after the noon of a day.</summary>
    public static int MinutesAfterNoon(LocalDateTime moment, LocalDate day) =>
        (Period.DaysBetween(day, moment.Date) * Day) + (moment.Hour * 60) + moment.Minute - Noon;

    private void Add(PlannedStage stage)
    {
        foreach (var part in stage.Parts)
        {
            var people = People(part).ToList();
            people.ForEach(person => Split(hands, person, stage, BarKind.Hands, part.Start, part.End));
            if (part.Kind == PartKind.Run)
            {
                Split(machines, Machine(part), stage, BarKind.Run, part.Start, part.End);
            }
            else if (part.Kind == PartKind.Wait)
            {
                Wait(stage, part);
            }
            else if (part.Kind == PartKind.Unload && stage.Parts.LastOrDefault(p => p.Kind == PartKind.Run) is { } run)
            {
                Split(machines, Machine(run), stage, BarKind.Held, run.End, part.End);
            }
        }
    }

    /// <summary>A wait is shown where it begins and where it ends; in between there is nothing to see.</summary>
    private void Wait(PlannedStage stage, PlannedPart part)
    {
        var lane = $"\uFFFF{stage.Name}";
        var day = Duration.FromDays(1);
        if (part.End - part.Start <= day + day)
        {
            Split(machines, lane, stage, BarKind.Wait, part.Start, part.End);
            return;
        }

        Split(machines, lane, stage, BarKind.Wait, part.Start, NoonAfter(part.Start));
        Split(machines, lane, stage, BarKind.Wait, NoonBefore(part.End), part.End);
    }

    private Instant NoonAfter(Instant moment) => NoonOf(BenchView.RowOf(moment.InZone(plan.Zone).LocalDateTime).PlusDays(1));

    private Instant NoonBefore(Instant moment) => NoonOf(BenchView.RowOf(moment.InZone(plan.Zone).LocalDateTime));

    private Instant NoonOf(LocalDate day) => day.At(new LocalTime(12, 0)).InZoneLeniently(plan.Zone).ToInstant();

    private IEnumerable<string> People(PlannedPart part) => part.Kind is PartKind.Run or PartKind.Wait
        ? []
        : part.Stations.Where(IsPerson).Select(id => id.ToString());

    private bool IsPerson(Id id) =>
        plan.Request.Workshop.People.Contains(id)
        || !(plan.Request.Workshop.Machines.Contains(id) || plan.Request.Workshop.Places.Contains(id));

    private string Machine(PlannedPart part) =>
        part.Stations.Where(plan.Request.Workshop.Machines.Contains).Select(id => id.ToString()).FirstOrDefault() ?? "";

    private void Split(
        Dictionary<(int Row, string Lane), List<Bar>> lanes, string lane, PlannedStage stage, BarKind kind, Instant start, Instant end)
    {
        if (end <= from || start >= until)
        {
            return;
        }

        var first = MinutesAfterNoon(start.InZone(plan.Zone).LocalDateTime, view.FirstDay);
        var to = MinutesAfterNoon(end.InZone(plan.Zone).LocalDateTime, view.FirstDay);
        for (var row = Math.Max(0, (int)Math.Floor((double)first / Day)); row < view.Days && row * Day < to; row++)
        {
            var bars = lanes.TryGetValue((row, lane), out var there) ? there : lanes[(row, lane)] = [];
            bars.Add(new Bar(stage, kind, Math.Max(0, first - (row * Day)), Math.Min(Day, to - (row * Day))));
        }
    }

    private static ILookup<int, (string Lane, List<Bar> Bars)> ByRow(Dictionary<(int Row, string Lane), List<Bar>> lanes) =>
        lanes.ToLookup(lane => lane.Key.Row, lane => (lane.Key.Lane, lane.Value));

    private BenchRow Row(
        int row,
        ILookup<int, (string Lane, List<Bar> Bars)> hands,
        ILookup<int, (string Lane, List<Bar> Bars)> machines,
        ILookup<int, (int From, int To)> open) => new()
        {
            Day = view.FirstDay.PlusDays(row),
            Hands = Lanes(hands[row]),
            Machines = Lanes(machines[row]),
            Open = open[row].ToValueList(),
        };

    private ValueList<Lane> Lanes(IEnumerable<(string Lane, List<Bar> Bars)> lanes) => lanes
        .OrderBy(lane => lane.Lane, StringComparer.Ordinal)
        .Select(lane => new Lane(NameOf(lane.Lane), lane.Bars.OrderBy(bar => bar.From).ToValueList()))
        .ToValueList();

    private string NameOf(string lane)
    {
        var workshop = plan.Request.Workshop;
        return !Id.IsValid(lane) ? lane.TrimStart('\uFFFF')
            : workshop.People.Find(new Id(lane))?.Name ?? workshop.Machines.Find(new Id(lane))?.Name ?? "You";
    }

    /// <summary>The hours of all people together, as spans of the rows.</summary>
    private ILookup<int, (int From, int To)> Presence()
    {
        var presence = plan.Schedule.Problem.Stations
            .Where(station => station.Kind == StationKind.Person)
            .Aggregate(IntervalCalendar.Never, (all, person) => all.Union(person.Hours));
        return presence.Clip(Minute(from), Math.Max(Minute(from), Minute(until))).Spans().SelectMany(Spans).ToLookup(span => span.Row, span => (span.From, span.To));
    }

    private IEnumerable<(int Row, int From, int To)> Spans(MinuteSpan span)
    {
        var from = MinutesAfterNoon(Local(span.Start), view.FirstDay);
        var to = MinutesAfterNoon(Local(span.End), view.FirstDay);
        for (var row = Math.Max(0, (int)Math.Floor((double)from / Day)); row < view.Days && row * Day < to; row++)
        {
            yield return (row, Math.Max(0, from - (row * Day)), Math.Min(Day, to - (row * Day)));
        }
    }

    /// <summary>A moment as a minute of the schedule, none before its first.</summary>
    private int Minute(Instant moment) => (int)Math.Clamp((moment - plan.Request.PlannedAt).TotalMinutes, 0, IntervalCalendar.MaximumMinute);

    private LocalDateTime Local(int minute) =>
        (plan.Request.PlannedAt + Duration.FromMinutes(minute)).InZone(plan.Zone).LocalDateTime;
}
