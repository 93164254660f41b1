namespace EpisodePlanner.Scheduling.Tests.Bench;

/// <summary>
/// A small workshop: five days from Monday midnight; Ann is there from 18 to 22, Bob from 20 to 22; two printers and a
/// mill that never close, and a work table.
/// </summary>
internal static class Evenings
{
    public const int Ann = 0;
    public const int Bob = 1;
    public const int Printer = 2;
    public const int OtherPrinter = 3;
    public const int Mill = 4;
    public const int Table = 5;

    public const int Days = 5;
    public const int Horizon = Days * 1440;

    public static IntervalCalendar Presence { get; } = Daily(18, 22);

    /// <summary>The minute of an hour of a day, from day 0.</summary>
    public static int At(int day, int hour, int minute = 0) => (day * 1440) + (hour * 60) + minute;

    public static IntervalCalendar Daily(int from, int to) => IntervalCalendar.FromSpans(
        Enumerable.Range(0, Days).Select(day => new MinuteSpan(At(day, from), At(day, to))));

    public static BenchInput Input(params BenchStage[] stages) => new()
    {
        Horizon = Horizon,
        Presence = Presence,
        Stations =
        [
            new Station("Ann", StationKind.Person, Daily(18, 22)),
            new Station("Bob", StationKind.Person, Daily(20, 22)),
            new Station("the printer", StationKind.Machine, IntervalCalendar.Always(Horizon)),
            new Station("the other printer", StationKind.Machine, IntervalCalendar.Always(Horizon)),
            new Station("the mill", StationKind.Machine, IntervalCalendar.Always(Horizon)),
            new Station("the table", StationKind.Place, IntervalCalendar.Always(Horizon)),
        ],
        Limits = [new HoursLimit("quiet hours", Daily(8, 20))],
        Stages = stages,
    };

    public static BenchStage Work(string name, int minutes, params int[] stations) => new()
    {
        Name = name,
        Kind = StageKind.Attended,
        Minutes = minutes,
        Modes = [new StageMode { Stations = stations }],
    };

    public static BenchStage Wait(string name, int minutes, params int[] places) => new()
    {
        Name = name,
        Kind = StageKind.Wait,
        Minutes = minutes,
        Modes = [new StageMode { Stations = places }],
    };

    /// <summary>A print that runs alone, with touches of 5 minutes before and after it.</summary>
    public static BenchStage Print(string name, int minutes) => new()
    {
        Name = name,
        Kind = StageKind.Run,
        Minutes = minutes,
        FitMinutes = minutes,
        LoadMinutes = 5,
        UnloadMinutes = 5,
        Modes = [new StageMode { Machine = Printer, RunsAlone = true }],
    };

    public static BenchStage Watched(this BenchStage run) =>
        run with { Modes = [.. run.Modes.Select(mode => mode with { RunsAlone = false })] };

    /// <summary>The run is unloaded by hand, by some people in so many minutes.</summary>
    public static BenchStage UnloadedBy(this BenchStage run, int minutes, params int[] people) => run with
    {
        UnloadMinutes = minutes,
        UnloadTakesHands = true,
        Modes = [.. run.Modes.Select(mode => mode with { Stations = people })],
    };

    public static BenchLink After(int from, int to, int lag = 0) => new(from, to, LinkKind.After) { Lag = lag };
}
