using NodaTime;
using static EpisodePlanner.Planning.Tests.Sample;

namespace EpisodePlanner.Planning.Tests;

/// <summary>The sample's stations.</summary>
internal static class SampleStations
{
    public static OpenHours Evenings { get; } = new()
    {
        Weekly = [new WeeklyHours
        {
            Days = [IsoDayOfWeek.Monday, IsoDayOfWeek.Friday],
            From = new LocalTime(18, 0),
            To = new LocalTime(22, 0),
        }],
        Dated =
        [
            new DatedHours { Kind = DatedHoursKind.Closed, On = Day(4, 3), Through = Day(4, 6) },
            new DatedHours
            {
                Kind = DatedHoursKind.Extra,
                On = Day(4, 11),
                From = new LocalTime(9, 0),
                To = new LocalTime(12, 0),
            },
        ],
        Busy = [new BusyTime { From = Day(2, 2).At(new LocalTime(18, 0)), To = Day(2, 2).At(new LocalTime(20, 0)) }],
    };

    public static Keyed<Machine> Machines { get; } =
    [
        new Machine
        {
            Id = Id("printer-1"),
            Name = "Big printer",
            Kind = MachineKind.Printer,
            MayRunAlone = true,
            Place = Id("bench"),
        },
        new Machine { Id = Id("printer-2"), Name = "Small printer", Kind = MachineKind.Printer },
        new Machine { Id = Id("router-1"), Name = "Router", Kind = MachineKind.Router },
    ];

    public static Keyed<Place> Places { get; } =
    [
        new Place { Id = Id("bench"), Name = "Bench", Kind = PlaceKind.Bench, Quiet = Evenings.Weekly },
        new Place { Id = Id("desk"), Name = "Desk", Kind = PlaceKind.Desk },
        new Place
        {
            Id = Id("yard"),
            Name = "Yard",
            Kind = PlaceKind.Outdoors,
            DaylightOnly = true,
            Latitude = 53.3m,
            Longitude = -6.3m,
        },
    ];
}
