namespace EpisodePlanner.Planning;

/// <summary>One of the workshop's sets of things: what it is called and how it is taken out and put back.</summary>
/// <param name="Name">Its member in the workshop file: "people".</param>
/// <param name="Word">One of its things, in a sentence: "person".</param>
/// <param name="Get">Takes the set out of a workshop.</param>
/// <param name="Put">Gives the workshop with another set in its place.</param>
/// <typeparam name="T">The kind of thing.</typeparam>
internal sealed record Shelf<T>(
    string Name, string Word, Func<Workshop, Keyed<T>> Get, Func<Workshop, Keyed<T>, Workshop> Put)
    where T : class, IThing
{
    private readonly Spot spot = Spot.Root.Member(Name);

    /// <summary>Where the thing with this id is.</summary>
    public Spot At(Id id) => spot.Thing(id, $"{Word} '{id}'");
}

/// <summary>The sets of things that a workshop keeps, in the order of the file.</summary>
internal static class Shelves
{
    public static Shelf<Person> People { get; } =
        new("people", "person", w => w.People, (w, to) => w with { People = to });

    public static Shelf<Machine> Machines { get; } =
        new("machines", "machine", w => w.Machines, (w, to) => w with { Machines = to });

    public static Shelf<Place> Places { get; } =
        new("places", "place", w => w.Places, (w, to) => w with { Places = to });

    public static Shelf<Series> Series { get; } =
        new("series", "series", w => w.Series, (w, to) => w with { Series = to });

    public static Shelf<WorkTask> Tasks { get; } =
        new("tasks", "task", w => w.Tasks, (w, to) => w with { Tasks = to });

    public static Shelf<Episode> Episodes { get; } =
        new("episodes", "episode", w => w.Episodes, (w, to) => w with { Episodes = to });

    public static Shelf<SlotRule> SlotRules { get; } =
        new("slotRules", "slot rule", w => w.SlotRules, (w, to) => w with { SlotRules = to });

    public static Shelf<Upload> Uploads { get; } =
        new("uploads", "upload", w => w.Uploads, (w, to) => w with { Uploads = to });

    public static Shelf<LogEntry> Log { get; } =
        new("log", "log entry", w => w.Log, (w, to) => w with { Log = to });

    public static Shelf<ToldDate> ToldDates { get; } =
        new("toldDates", "told date", w => w.ToldDates, (w, to) => w with { ToldDates = to });

    public static Shelf<TimedLine> TimedLines { get; } =
        new("timedLines", "timed line", w => w.TimedLines, (w, to) => w with { TimedLines = to });

    public static Shelf<Booking> Bookings { get; } =
        new("bookings", "booking", w => w.Bookings, (w, to) => w with { Bookings = to });
}
