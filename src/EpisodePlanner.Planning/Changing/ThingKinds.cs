namespace EpisodePlanner.Planning;

/// <summary>The sets of things that a workshop keeps.</summary>
public static class ThingKinds
{
    /// <summary>The people.</summary>
    public static ThingKind<Person> People { get; } = new(
        "people", "person", w => w.People, (w, to) => w with { People = to }, (id, to) => new PersonChange(id, to));

    /// <summary>The machines.</summary>
    public static ThingKind<Machine> Machines { get; } = new(
        "machines", "machine", w => w.Machines, (w, to) => w with { Machines = to }, (id, to) => new MachineChange(id, to));

    /// <summary>The places.</summary>
    public static ThingKind<Place> Places { get; } = new(
        "places", "place", w => w.Places, (w, to) => w with { Places = to }, (id, to) => new PlaceChange(id, to));

    /// <summary>The series.</summary>
    public static ThingKind<Series> Series { get; } = new(
        "series", "series", w => w.Series, (w, to) => w with { Series = to }, (id, to) => new SeriesChange(id, to));

    /// <summary>The tasks.</summary>
    public static ThingKind<WorkTask> Tasks { get; } = new(
        "tasks", "task", w => w.Tasks, (w, to) => w with { Tasks = to }, (id, to) => new TaskChange(id, to));

    /// <summary>The episodes.</summary>
    public static ThingKind<Episode> Episodes { get; } = new(
        "episodes", "episode", w => w.Episodes, (w, to) => w with { Episodes = to }, (id, to) => new EpisodeChange(id, to));

    /// <summary>When the channel may publish.</summary>
    public static ThingKind<SlotRule> SlotRules { get; } = new(
        "slotRules", "slot rule", w => w.SlotRules, (w, to) => w with { SlotRules = to }, (id, to) => new SlotRuleChange(id, to));

    /// <summary>The uploads made.</summary>
    public static ThingKind<Upload> Uploads { get; } = new(
        "uploads", "upload", w => w.Uploads, (w, to) => w with { Uploads = to }, (id, to) => new UploadChange(id, to));

    /// <summary>The log.</summary>
    public static ThingKind<LogEntry> Log { get; } = new(
        "log", "log entry", w => w.Log, (w, to) => w with { Log = to }, (id, to) => new LogChange(id, to));

    /// <summary>The dates told.</summary>
    public static ThingKind<ToldDate> ToldDates { get; } = new(
        "toldDates", "told date", w => w.ToldDates, (w, to) => w with { ToldDates = to }, (id, to) => new ToldDateChange(id, to));

    /// <summary>The timed lines.</summary>
    public static ThingKind<TimedLine> TimedLines { get; } = new(
        "timedLines", "timed line", w => w.TimedLines, (w, to) => w with { TimedLines = to }, (id, to) => new TimedLineChange(id, to));

    /// <summary>The bookings.</summary>
    public static ThingKind<Booking> Bookings { get; } = new(
        "bookings", "booking", w => w.Bookings, (w, to) => w with { Bookings = to }, (id, to) => new BookingChange(id, to));

    /// <summary>All of them, in the order of the workshop file.</summary>
    public static ValueList<ThingKind> All { get; } =
    [
        People,
        Machines,
        Places,
        Series,
        Tasks,
        Episodes,
        SlotRules,
        Uploads,
        Log,
        ToldDates,
        TimedLines,
        Bookings,
    ];

    /// <summary>The kind with this name, or null.</summary>
    public static ThingKind? Find(string name) => All.FirstOrDefault(kind => kind.Name == name);
}
