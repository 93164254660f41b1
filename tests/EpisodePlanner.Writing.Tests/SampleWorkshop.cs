using EpisodePlanner.Planning;
using NodaTime;

namespace EpisodePlanner.Writing.Tests;

/// <summary>An invented workshop: a rail trolley near its next episode, a yacht at rest, a table with nothing planned.</summary>
internal static class SampleWorkshop
{
    public static readonly DateTimeZone Zone = DateTimeZoneProviders.Tzdb["Europe/Dublin"];

    public static Workshop Build() => new()
    {
        Format = 1,
        Name = "Hollow Lane Works",
        Zone = "Europe/Dublin",
        Settings = new Settings { EarlyViewHours = 24 },
        Machines =
        [
            new Machine { Id = new("lathe"), Name = "the small lathe", Kind = MachineKind.Lathe },
            new Machine { Id = new("printer"), Name = "the tall printer", Kind = MachineKind.Printer, MayRunAlone = true },
        ],
        Series = [Gorse(), Sedge(), new Series { Id = new("larch"), Name = "Larch, a walking table" }],
        Tasks = [.. SampleTasks.All()],
        Episodes = [new Episode { Id = new("brakes-hold"), Title = "The brakes hold", Series = new("gorse"), Milestones = [new("wheels"), new("brakes")] }],
        Uploads = [new Upload { Id = new("u1"), Series = new("gorse"), Date = new(2026, 11, 7), Title = "The frame stands" }],
        Log = [.. SampleLog.All()],
        ToldDates =
        [
            new ToldDate { Id = new("told1"), Episode = new("brakes-hold"), Date = new(2026, 11, 27), ToldOn = new(2026, 11, 9), To = "supporters" },
        ],
        TimedLines =
        [
            Line("line1", "The paint maker's code GORSE10 saves a tenth", new(2026, 12, 31), new("brakes-hold")) with { DueBy = new(2026, 12, 15) },
            Line("line2", "The model fair is still to come", new(2026, 12, 2), new("brakes-hold")),
            Line("line3", "Calendars are in the shop", new(2026, 12, 24), null),
        ],
    };

    public static Instant At(int month, int day, int hour, int minute = 0) =>
        Zone.AtStrictly(new LocalDateTime(2026, month, day, hour, minute)).ToInstant();

    private static Series Gorse() => new()
    {
        Id = new("gorse"),
        Name = "Gorse, a rail trolley",
        Promise = new Promise { LongestSilenceDays = 21 },
        Milestones =
        [
            new Milestone { Id = new("wheels"), Name = "Wheels on", ScreenMinutes = new ThreePoint { Low = 3, Likely = 4, High = 6 } },
            new Milestone { Id = new("brakes"), Name = "Brakes that hold", Payoff = true, ScreenMinutes = new ThreePoint { Low = 5, Likely = 5, High = 5 } },
            new Milestone { Id = new("rides"), Name = "It rides" },
        ],
    };

    private static Series Sedge() => new()
    {
        Id = new("sedge"),
        Name = "Sedge, a sand yacht",
        State = SeriesState.Resting,
        RestingUntil = new LocalDate(2027, 1, 4),
    };

    private static TimedLine Line(string id, string text, LocalDate until, Id? episode) =>
        new() { Id = new(id), Text = text, From = new LocalDate(2026, 11, 1), Until = until, Episode = episode };
}
