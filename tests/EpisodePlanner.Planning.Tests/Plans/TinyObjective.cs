using NodaTime;

namespace EpisodePlanner.Planning.Tests.Plans;

/// <summary>
/// What a schedule of a tiny workshop weighs, computed from the finishes of its stages by the rules alone: lateness in
/// minutes; squares of days beyond promises, each at most 30 days, series and channel, the open end included, at their
/// least where what is ready may be held back; no moves;
/// the end. It shares no code with the planner's.
/// </summary>
/// <remarks>Planned at noon in a zone without clock changes: day n begins 12 hours before minute n · 1440.</remarks>
internal sealed class TinyObjective
{
    private const int Day = 1440;

    private readonly List<Line> lines = [];
    private readonly List<(int Stage, int By)> needed = [];
    private readonly List<int> slots;
    private readonly int channelFrom;
    private readonly int channelPromise;
    private readonly int last;

    public TinyObjective(Plan plan)
    {
        var workshop = plan.Request.Workshop;
        var today = plan.Now.Date;
        int DayOf(LocalDate date) => Period.DaysBetween(today, date);
        last = DayOf(plan.Horizon.InUtc().Date);
        channelFrom = DayOf(workshop.Uploads.Max(u => u.Date));
        channelPromise = workshop.Settings.ChannelPromiseDays!.Value;
        slots = [.. SlotDays(workshop.SlotRules.Single().Rule, today)];
        var lead = (int)((workshop.Settings.SafetyLeadHours ?? 0) * 60);
        foreach (var series in workshop.Series.OrderBy(s => s.Name, StringComparer.Ordinal))
        {
            var episodes = plan.Episodes.Where(e => e.Series == series.Id).OrderBy(e => e.Assumed).Select(e => new Part(
                plan.Stages.Single(s => s.Key.IsTail && s.Key.Episode == e.Id).Index,
                lead,
                workshop.ToldDates.Where(t => t.Episode == e.Id).Select(t => (int?)EndOf(DayOf(t.Date))).SingleOrDefault()));
            var from = DayOf(workshop.Uploads.Single(u => u.Series == series.Id).Date);
            lines.Add(new Line([.. episodes], from, series.Promise!.LongestSilenceDays!.Value));
        }

        needed.AddRange(workshop.Tasks.Where(t => t.NeededBy is not null).Select(t =>
            (plan.Stages.Single(s => s.Key.Task == t.Id).Index, EndOf(DayOf(t.NeededBy!.Value)))));
    }

    /// <summary>
    /// The weights of finishes, by stage; of a stage without one (−1) the earliest thinkable, so that more stages never
    /// weigh less.
    /// </summary>
    public long[] Of(int[] finishes)
    {
        var days = lines.ConvertAll(_ => new List<int>());
        var late = needed.Sum(n => (long)Math.Max(0, finishes[n.Stage] - n.By));
        foreach (var slot in slots)
        {
            if (Next(slot, days, finishes) is not { } line)
            {
                continue;
            }

            // The last minute of the told day still keeps it.
            var told = lines[line].Episodes[days[line].Count].ToldBy;
            late += told is { } end ? Math.Max(0, (slot * Day) - (end - 1)) : 0;
            days[line].Add(slot);
        }

        var silence = lines.Zip(days).Sum(x => Beyond(x.First.From, x.Second, x.First.Promise))
            + Beyond(channelFrom, days.SelectMany(d => d).Order(), channelPromise);
        return [late, silence, 0, finishes.Max(finish => Math.Max(0, finish))];
    }

    /// <summary>The series that takes a slot: told dates first, then the one whose promise breaks first, then by name.</summary>
    private int? Next(int slot, List<List<int>> days, int[] finishes) => Enumerable.Range(0, lines.Count)
        .Where(s => days[s].Count < lines[s].Episodes.Count && IsReady(lines[s].Episodes[days[s].Count], slot, finishes))
        .OrderBy(s => lines[s].Episodes[days[s].Count].ToldBy is null)
        .ThenBy(s => (days[s].Count > 0 ? days[s][^1] : lines[s].From) + lines[s].Promise)
        .Select(s => (int?)s)
        .FirstOrDefault();

    private static bool IsReady(Part episode, int slot, int[] finishes) =>
        Math.Max(0, finishes[episode.Tail]) + episode.Lead < slot * Day;

    /// <summary>The least weight of all ways to hold episodes back, day by day; the last one goes out as soon as it can.</summary>
    private long Beyond(int from, IEnumerable<int> days, int promise)
    {
        int[] possible = [.. days];
        var end = possible.Length == 0 ? from : possible[^1];
        var least = new Dictionary<int, long> { [from] = 0 };
        for (var i = 0; i < possible.Length; i++)
        {
            var first = i == possible.Length - 1 ? end : possible[i];
            least = Enumerable.Range(first, end - first + 1).ToDictionary(
                day => day,
                day => least.Where(before => before.Key <= day).Min(before => before.Value + Square(day - before.Key - promise)));
        }

        return least.Values.Min() + Square(last - end - promise);
    }

    private static long Square(int beyond) => (long)Math.Pow(Math.Clamp(beyond, 0, 30), 2);

    private static int EndOf(int day) => (day * Day) + (Day / 2);

    /// <summary>The days of the one rule, from today on.</summary>
    private static IEnumerable<int> SlotDays(string rule, LocalDate today)
    {
        IsoDayOfWeek[] on = rule.EndsWith("TU,FR", StringComparison.Ordinal) ? [IsoDayOfWeek.Tuesday, IsoDayOfWeek.Friday]
            : rule.EndsWith("WE,SA", StringComparison.Ordinal) ? [IsoDayOfWeek.Wednesday, IsoDayOfWeek.Saturday]
            : Enum.GetValues<IsoDayOfWeek>();
        return Enumerable.Range(0, 60).Where(day => on.Contains(today.PlusDays(day).DayOfWeek));
    }

    /// <summary>An episode: the stage of its tail, its lead, and the end of the day it was told for.</summary>
    private sealed record Part(int Tail, int Lead, int? ToldBy);

    /// <summary>A series: its episodes in story order, the day of its last upload, its promise in days.</summary>
    private sealed record Line(List<Part> Episodes, int From, int Promise);
}
