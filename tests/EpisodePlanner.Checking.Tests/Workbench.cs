using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Checking.Tests;

/// <summary>A small workshop and short words for hand-built schedules.</summary>
internal static class Workbench
{
    public const int Ann = 0;
    public const int Bob = 1;
    public const int Printer = 2;
    public const int Bench = 3;
    public const int Desk = 4;
    public const int Shed = 5;

    public const int Quiet = 0;

    /// <summary>
    /// Horizon 200. Ann 0–100 and 120–200, Bob and the desk always, the printer 0–150, somebody present 10–100 and
    /// 120–200; bench 0–200 with 5 minutes of setting up and 3 of tidying, shed 20–200 with 2 and 1; limit 0–60 and 80–200.
    /// </summary>
    public static BenchInput Input(params BenchStage[] stages) => new()
    {
        Horizon = 200,
        Presence = Open((10, 100), (120, 200)),
        Stations =
        [
            new Station("Ann", StationKind.Person, Open((0, 100), (120, 200))),
            new Station("Bob", StationKind.Person, Open((0, 200))),
            new Station("the printer", StationKind.Machine, Open((0, 150))),
            new Station("the bench", StationKind.Place, Open((0, 200))) { SetUpMinutes = 5, TidyMinutes = 3 },
            new Station("the desk", StationKind.Place, Open((0, 200))),
            new Station("the shed", StationKind.Place, Open((20, 200))) { SetUpMinutes = 2, TidyMinutes = 1 },
        ],
        Limits = [new HoursLimit("the limit", Open((0, 60), (80, 200)))],
        Stages = stages,
    };

    public static BenchSchedule Schedule(BenchInput input, params SchedulePart[][] parts)
    {
        var result = BenchProblem.Create(input);
        return BenchSchedule.FromParts(Assert.IsType<BenchProblemResult.Sound>(result).Problem, parts);
    }

    /// <summary>The schedule keeps every rule.</summary>
    public static void AssertRight(BenchInput input, params SchedulePart[][] parts) =>
        Assert.Empty(ScheduleChecker.Check(Schedule(input, parts)));

    /// <summary>The schedule breaks just one rule, told in a sentence with these words.</summary>
    public static void AssertWrong(string words, BenchInput input, params SchedulePart[][] parts) =>
        Assert.Contains(words, Assert.Single(ScheduleChecker.Check(Schedule(input, parts))), StringComparison.Ordinal);

    /// <summary>The schedule breaks so many rules at once, one of them told in a sentence with these words.</summary>
    public static void AssertWrong(string words, int findings, BenchInput input, params SchedulePart[][] parts)
    {
        var found = ScheduleChecker.Check(Schedule(input, parts));
        Assert.Equal(findings, found.Count);
        Assert.Contains(found, sentence => sentence.Contains(words, StringComparison.Ordinal));
    }

    public static BenchStage Attended(string name, int minutes, params int[] stations) => new()
    {
        Name = name,
        Kind = StageKind.Attended,
        Minutes = minutes,
        Modes = [new StageMode { Stations = stations }],
    };

    /// <summary>A print with a touch of 2 minutes before it and 3 minutes after it.</summary>
    public static BenchStage Print(string name, int minutes, bool alone, params int[] hands) => new()
    {
        Name = name,
        Kind = StageKind.Run,
        Minutes = minutes,
        Modes = [new StageMode { Machine = Printer, Stations = hands, RunsAlone = alone }],
        LoadMinutes = 2,
        UnloadMinutes = 3,
        FitMinutes = minutes,
    };

    public static BenchStage Wait(string name, int minutes, params int[] places) => new()
    {
        Name = name,
        Kind = StageKind.Wait,
        Minutes = minutes,
        Modes = [new StageMode { Stations = places }],
    };

    /// <summary>The workshop with these stages, every glued wait linked to what it is glued to.</summary>
    public static BenchInput Glued(params BenchStage[] stages) => Input(stages) with
    {
        Links =
        [
            .. Enumerable.Range(0, stages.Length).Where(i => stages[i].GluedTo >= 0)
                .Select(i => new BenchLink(stages[i].GluedTo, i, LinkKind.After)),
        ],
    };

    public static SchedulePart Work(int start, int end, int mode = 0) => new(PartKind.Work, start, end, mode);

    public static SchedulePart Waited(int start, int end, int mode = 0) => new(PartKind.Wait, start, end, mode);

    /// <summary>Load, run and unload of a print with its usual touches.</summary>
    public static SchedulePart[] Printed(int start, int minutes, int unload) =>
    [
        new(PartKind.Load, start, start + 2, 0),
        new(PartKind.Run, start + 2, start + 2 + minutes, 0),
        new(PartKind.Unload, unload, unload + 3, 0),
    ];

    public static IntervalCalendar Open(params (int Start, int End)[] spans) =>
        IntervalCalendar.FromSpans(spans.Select(s => new MinuteSpan(s.Start, s.End)));
}
