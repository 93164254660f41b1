using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Planning;

/// <summary>The stations of a workshop as the bench problem knows them: dense indices, hours in minutes, limits.</summary>
internal sealed class StationTable
{
    private readonly Dictionary<Id, int> indices = [];
    private readonly Dictionary<Id, int> quiet = [];
    private readonly Dictionary<Id, int> daylight = [];
    private readonly Dictionary<Id, int> open = [];
    private readonly List<Station> stations = [];
    private readonly List<HoursLimit> limits = [];
    private readonly List<Id> ids = [];
    private readonly Workshop workshop;

    public StationTable(Workshop workshop, TimeAxis axis)
    {
        this.workshop = workshop;
        foreach (var person in PeopleOf(workshop))
        {
            Add(person.Id, new Station(person.Name, StationKind.Person, HoursCalendar.Of(person.Hours ?? Defaults.Evenings, axis)));
        }

        Presence = stations.Aggregate(IntervalCalendar.Never, (all, person) => all.Union(person.Hours));
        foreach (var machine in workshop.Machines)
        {
            Add(machine.Id, new Station(machine.Name, StationKind.Machine, HoursCalendar.Of(machine.Hours, axis)));
        }

        foreach (var place in workshop.Places)
        {
            AddPlace(place, axis);
        }
    }

    /// <summary>When somebody is present.</summary>
    public IntervalCalendar Presence { get; }

    public IReadOnlyList<Station> Stations => stations;

    public IReadOnlyList<HoursLimit> Limits => limits;

    /// <summary>The ids of the people, in order.</summary>
    public ValueList<Id> People => PeopleOf(workshop).Select(person => person.Id).ToValueList();

    public int IndexOf(Id station) => indices[station];

    public Id IdOf(int station) => ids[station];

    /// <summary>The limits that bind a stage with these stations.</summary>
    public IReadOnlyList<int> LimitsOf(IEnumerable<Id> chosen, bool loud)
    {
        var places = chosen.Select(id => workshop.Machines.Find(id)?.Place ?? id).Distinct().ToList();
        var bound = chosen.Where(daylight.ContainsKey).Select(id => daylight[id]);
        return loud ? [.. bound, .. places.Where(quiet.ContainsKey).Select(id => quiet[id])] : [.. bound];
    }

    /// <summary>The limit that a place's hours are for work that is done there without taking it; none where it is always open.</summary>
    public IEnumerable<int> OpenHoursOf(Place place)
    {
        if (place is { Hours: null, ByBookingOnly: false })
        {
            return [];
        }

        if (!open.TryGetValue(place.Id, out var limit))
        {
            limit = limits.Count;
            open.Add(place.Id, limit);
            limits.Add(new HoursLimit($"the time in which {place.Name} is closed", stations[IndexOf(place.Id)].Hours));
        }

        return [limit];
    }

    /// <summary>The people; where nobody is named, one pair of hands under an id that is free.</summary>
    public static IEnumerable<Person> PeopleOf(Workshop workshop)
    {
        if (workshop.People.Count > 0)
        {
            return workshop.People;
        }

        var taken = workshop.Machines.Contains(Defaults.Maker.Id) || workshop.Places.Contains(Defaults.Maker.Id);
        return [taken ? Defaults.Maker with { Id = new Id("you.yourself") } : Defaults.Maker];
    }

    private void Add(Id id, Station station)
    {
        indices.Add(id, stations.Count);
        stations.Add(station);
        ids.Add(id);
    }

    private void AddPlace(Place place, TimeAxis axis)
    {
        var hours = HoursCalendar.Of(place.Hours, axis);
        if (place.ByBookingOnly)
        {
            hours = hours.Intersect(Booked(place, axis));
        }

        Add(place.Id, new Station(place.Name, StationKind.Place, hours)
        {
            SetUpMinutes = place.SetUpMinutes,
            TidyMinutes = place.TidyMinutes,
        });
        if (place.Quiet.Count > 0)
        {
            quiet.Add(place.Id, limits.Count);
            var loudHours = IntervalCalendar.Always(axis.Horizon).Except(HoursCalendar.Weekly(place.Quiet, axis));
            limits.Add(new HoursLimit($"the quiet hours of {place.Name}", loudHours));
        }

        if (place is { DaylightOnly: true, Latitude: { } north, Longitude: { } east })
        {
            daylight.Add(place.Id, limits.Count);
            limits.Add(new HoursLimit($"the dark at {place.Name}", Daylight.Calendar((double)north, (double)east, axis)));
        }
    }

    /// <summary>The time booked: each booking, and again as long from its next window; what does not fit the first waits for that.</summary>
    private IntervalCalendar Booked(Place place, TimeAxis axis) => IntervalCalendar.FromSpans(
        workshop.Bookings.Where(booking => booking.Place == place.Id)
            .SelectMany(booking => booking.NextWindow is { } next
                ? [(booking.From, booking.To), (From: next, To: next + (booking.To - booking.From))]
                : new[] { (booking.From, booking.To) })
            .Select(window => new MinuteSpan(
                Math.Clamp(axis.MinuteOf(window.From), 0, axis.Horizon),
                Math.Clamp(axis.MinuteOf(window.To), 0, axis.Horizon))));
}
