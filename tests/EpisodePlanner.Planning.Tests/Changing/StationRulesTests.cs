using NodaTime;
using static EpisodePlanner.Planning.Tests.Sample;

namespace EpisodePlanner.Planning.Tests;

public class StationRulesTests
{
    [Fact]
    public void Check_MachineAndPersonShareId() => Breaks.One(
        Sound with { Machines = Sound.Machines.With(new Machine { Id = Id("anna"), Name = "A", Kind = MachineKind.Saw }) },
        "$.machines['anna']",
        "The id 'anna' is taken by a person; stations share one set of ids, so give this machine another.");

    [Fact]
    public void Check_PlaceAndMachineShareId() => Breaks.One(
        Sound with { Places = Sound.Places.With(new Place { Id = Id("router-1"), Name = "R", Kind = PlaceKind.Bench }) },
        "$.places['router-1']",
        "The id 'router-1' is taken by a machine; stations share one set of ids, so give this place another.");

    [Theory]
    [InlineData(MachineKind.Router, "A router never runs alone; remove mayRunAlone.")]
    [InlineData(MachineKind.Oven, "An oven never runs alone; remove mayRunAlone.")]
    [InlineData(MachineKind.Other, "A machine of another or unknown kind never runs alone; remove mayRunAlone.")]
    public void Check_MachineNeverAllowedAlone(MachineKind kind, string says) => Breaks.One(
        WithMachine("router-1", m => m with { Kind = kind, MayRunAlone = true }),
        "$.machines['router-1'].mayRunAlone",
        says);

    [Fact]
    public void Check_MachineInUnknownPlace() => Breaks.One(
        WithMachine("router-1", m => m with { Place = Id("bensh") }),
        "$.machines['router-1'].place",
        "There is no place 'bensh'; the nearest is 'bench'.");

    [Fact]
    public void Check_DaylightWithoutCoordinates() => Breaks.One(
        WithPlace("yard", p => p with { Latitude = null, Longitude = null }),
        "$.places['yard'].daylightOnly",
        "Daylight is computed from coordinates; give latitude and longitude.");

    [Fact]
    public void Check_LatitudeAlone() => Breaks.One(
        WithPlace("yard", p => p with { Longitude = null }),
        "$.places['yard'].longitude",
        "Coordinates go together; give the longitude beside the latitude.");

    [Fact]
    public void Check_LongitudeAlone() => Breaks.One(
        WithPlace("yard", p => p with { Latitude = null }),
        "$.places['yard'].latitude",
        "Coordinates go together; give the latitude beside the longitude.");

    [Fact]
    public void Check_NoDayOfWeek() => Breaks.One(
        WithHours(new OpenHours
        {
            Weekly = [new WeeklyHours { Days = [IsoDayOfWeek.None], From = default, To = default }],
        }),
        "$.people['anna'].hours.weekly[0].days[0]",
        "This is no day of the week; name one from Monday to Sunday.");

    [Fact]
    public void Check_ExtraHoursWithoutTimes() => Breaks.One(
        WithHours(Dated(new DatedHours { Kind = DatedHoursKind.Extra, On = Day(4, 1) })),
        "$.people['anna'].hours.dated[0]",
        "Extra hours need both times; give 'from' and 'to'.");

    [Fact]
    public void Check_ClosedHoursWithOneTime() => Breaks.One(
        WithHours(Dated(new DatedHours { Kind = DatedHoursKind.Closed, On = Day(4, 1), From = new LocalTime(8, 0) })),
        "$.people['anna'].hours.dated[0]",
        "Closed hours have both times or none; give 'from' and 'to', or neither for the whole day.");

    [Fact]
    public void Check_LastDayBeforeFirst() => Breaks.One(
        WithHours(Dated(new DatedHours { Kind = DatedHoursKind.Closed, On = Day(4, 2), Through = Day(4, 1) })),
        "$.people['anna'].hours.dated[0].through",
        "The last day comes before the first; put it on the first or later.");

    [Fact]
    public void Check_BusyTimeWithoutLength() => Breaks.One(
        WithHours(new OpenHours
        {
            Busy = [new BusyTime { From = Day(4, 2).AtMidnight(), To = Day(4, 2).AtMidnight() }],
        }),
        "$.people['anna'].hours.busy[0].to",
        "This busy time ends before it begins; put its end after its beginning.");

    [Fact]
    public void Check_HoursOfMachinesAndPlaces()
    {
        var hours = Dated(new DatedHours { Kind = DatedHoursKind.Extra, On = Day(4, 1) });
        Breaks.At(WithMachine("router-1", m => m with { Hours = hours }), "$.machines['router-1'].hours.dated[0]");
        Breaks.At(WithPlace("bench", p => p with { Hours = hours }), "$.places['bench'].hours.dated[0]");
    }

    private static Workshop WithHours(OpenHours hours) => WithPerson("anna", p => p with { Hours = hours });

    private static OpenHours Dated(DatedHours dated) => new() { Dated = [dated] };
}
