using EpisodePlanner.Planning;
using NodaTime;

namespace EpisodePlanner.Benchmarks.Scale;

/// <summary>The people, machines and places of a generated workshop.</summary>
internal static class GeneratedStations
{
    private static readonly LocalTime Midnight = LocalTime.Midnight;

    private static readonly IsoDayOfWeek[] Weekdays =
        [IsoDayOfWeek.Monday, IsoDayOfWeek.Tuesday, IsoDayOfWeek.Wednesday, IsoDayOfWeek.Thursday, IsoDayOfWeek.Friday];

    public static ValueList<Id> Printers { get; } = [new("printer-1"), new("printer-2")];

    public static ValueList<Id> Benches { get; } = [new("bench-1"), new("bench-2")];

    public static ValueList<Id> Laser { get; } = [new("laser")];

    public static ValueList<Id> Mill { get; } = [new("mill")];

    public static Id Desk { get; } = new("desk");

    public static Keyed<Person> People { get; } =
    [
        new Person { Id = new Id("ann"), Name = "Ann", Hours = Hours(Evenings(19, 22), Weekend(10, 18)) },
        new Person { Id = new Id("ben"), Name = "Ben", Hours = Hours(Evenings(18, 21), Weekend(9, 15)) },
    ];

    public static Keyed<Machine> Machines { get; } =
    [
        Printer("printer-1", "First printer"),
        Printer("printer-2", "Second printer"),
        new Machine { Id = new Id("laser"), Name = "Laser", Kind = MachineKind.Laser },
        new Machine { Id = new Id("mill"), Name = "Mill", Kind = MachineKind.Mill },
    ];

    public static Keyed<Place> Places { get; } =
    [
        Bench("bench-1", "First bench"),
        Bench("bench-2", "Second bench"),
        new Place { Id = Desk, Name = "Desk", Kind = PlaceKind.Desk, Hours = Always() },
    ];

    private static Machine Printer(string id, string name) =>
        new() { Id = new Id(id), Name = name, Kind = MachineKind.Printer, MayRunAlone = true, Hours = Always() };

    private static Place Bench(string id, string name) => new()
    {
        Id = new Id(id),
        Name = name,
        Kind = PlaceKind.Bench,
        Hours = Always(),
        SetUpMinutes = 10,
        TidyMinutes = 5,
    };

    private static OpenHours Always() => Hours(Between([.. Weekdays, IsoDayOfWeek.Saturday, IsoDayOfWeek.Sunday], Midnight, Midnight));

    private static OpenHours Hours(params WeeklyHours[] weekly) => new() { Weekly = [.. weekly] };

    private static WeeklyHours Evenings(int from, int to) => Between(Weekdays, new LocalTime(from, 0), new LocalTime(to, 0));

    private static WeeklyHours Weekend(int from, int to) =>
        Between([IsoDayOfWeek.Saturday, IsoDayOfWeek.Sunday], new LocalTime(from, 0), new LocalTime(to, 0));

    private static WeeklyHours Between(IsoDayOfWeek[] days, LocalTime from, LocalTime to) =>
        new() { Days = [.. days], From = from, To = to };
}
