using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Checking;

/// <summary>Stations and limits of a random problem: people in the evening and at weekends, machines at most times.</summary>
internal sealed class RandomStations
{
    private readonly Dice dice;
    private readonly ProblemSize size;

    public RandomStations(Dice dice, ProblemSize size)
    {
        this.dice = dice;
        this.size = size;
        All =
        [
            .. Enumerable.Range(0, size.People).Select(i => new Station($"Person {i}", StationKind.Person, PersonHours())),
            .. Enumerable.Range(0, size.Machines).Select(i => new Station($"Machine {i}", StationKind.Machine, LongHours())),
            .. Enumerable.Range(0, size.Places).Select(Place),
        ];
        Limits = [.. Enumerable.Range(0, dice.Between(0, 2)).Select(i => new HoursLimit($"limit {i}", LongHours()))];
        Presence = IntervalCalendar.FromSpans(All.Take(size.People).SelectMany(p => SpansOf(p.Hours)));
    }

    public IReadOnlyList<Station> All { get; }

    public IReadOnlyList<HoursLimit> Limits { get; }

    public IntervalCalendar Presence { get; }

    public IReadOnlyList<int> Of(StationKind kind) => [.. Enumerable.Range(0, All.Count).Where(i => All[i].Kind == kind)];

    /// <summary>Some calendar that something can be counted in or looked at by.</summary>
    public IntervalCalendar SomeHours() => dice.Pick([Presence, All[0].Hours, LongHours(), Moments()]);

    /// <summary>A minute or two on most days.</summary>
    public IntervalCalendar Moments() => Daily(day => dice.Chance(80) ? Within(day, dice.Between(0, size.Day - 2), 2) : []);

    private Station Place(int index) => new($"Place {index}", StationKind.Place, LongHours())
    {
        SetUpMinutes = dice.Chance(50) ? 0 : dice.Between(1, Math.Max(1, size.Day / 10)),
        TidyMinutes = dice.Chance(50) ? 0 : dice.Between(1, Math.Max(1, size.Day / 10)),
    };

    private IntervalCalendar PersonHours()
    {
        var evening = size.Day / 2;
        return Daily(day => (day % 7) switch
        {
            5 or 6 => Within(day, size.Day / 4, dice.Between(size.Day / 4, size.Day / 2)),
            _ when dice.Chance(20) => [],
            _ => Within(day, evening, dice.Between(2, size.Day / 2)).Concat(
                dice.Chance(30) ? Within(day, dice.Between(0, 2), dice.Between(1, size.Day / 4)) : []),
        });
    }

    private IntervalCalendar LongHours() => dice.Chance(40)
        ? IntervalCalendar.Always(size.Horizon)
        : Daily(day => dice.Chance(10) ? [] : Within(day, dice.Between(0, size.Day / 3), dice.Between(size.Day / 3, size.Day)));

    private IntervalCalendar Daily(Func<int, IEnumerable<MinuteSpan>> hours) =>
        IntervalCalendar.FromSpans(Enumerable.Range(0, size.Days).SelectMany(hours).ToArray());

    private IEnumerable<MinuteSpan> Within(int day, int from, int length)
    {
        var start = (day * size.Day) + from;
        return [new MinuteSpan(start, Math.Max(start, Math.Min(start + length, size.Horizon)))];
    }

    private static IEnumerable<MinuteSpan> SpansOf(IntervalCalendar calendar) =>
        calendar.Starts.ToArray().Zip(calendar.Ends.ToArray(), (start, end) => new MinuteSpan(start, end));
}
