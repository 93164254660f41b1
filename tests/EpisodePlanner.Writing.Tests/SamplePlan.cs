using EpisodePlanner.Planning;
using EpisodePlanner.Scheduling;
using NodaTime;

namespace EpisodePlanner.Writing.Tests;

/// <summary>A plan of the sample workshop, put together by hand: Monday 30 November 2026, 08:00.</summary>
internal static class SamplePlan
{
    public static readonly Id Brakes = new("brakes-hold");

    public static Plan Build() => new()
    {
        Request = new PlanRequest(SampleWorkshop.Build(), SampleWorkshop.At(11, 30, 8)),
        Zone = SampleWorkshop.Zone,
        Horizon = SampleWorkshop.At(12, 31, 0),
        Stages =
        [
            Run("shoes", "brake shoes: print", 840),
            Task("gearbox", "fill the gearbox", "1", WorkKind.Assemble, 120, At(12, 1, 19), At(12, 1, 21)),
            Task("shoes", "brake shoes: fit", "2", WorkKind.Print, 120, At(12, 1, 21), At(12, 1, 23)),
            Task("weld", "closing weld", "1", WorkKind.Weld, 120, At(12, 2, 19), At(12, 2, 21)),
            Tail(0, "talking to camera", 60, At(12, 2, 21), At(12, 2, 22)),
            Tail(1, "an edit pass", 480, At(12, 3, 8), At(12, 3, 16)),
        ],
        Episodes = [Episode()],
        Series = [Gorse(), Quiet("larch", "Larch, a walking table", SeriesState.Active), Quiet("sedge", "Sedge, a sand yacht", SeriesState.Resting)],
        Channel = Quiet("", "the channel", SeriesState.Active),
        Findings = [],
        Schedule = BenchSchedule.FromParts(EmptyProblem(), []),
        Rule = "by hand",
        Generated = 1,
        Weights = new PlanWeights(0, 0, 0, 0),
    };

    public static Plan With(this Plan plan, Func<Workshop, Workshop> change) =>
        plan with { Request = plan.Request with { Workshop = change(plan.Request.Workshop) } };

    private static Instant At(int month, int day, int hour) => SampleWorkshop.At(month, day, hour);

    private static PlannedEpisode Episode() => new()
    {
        Id = Brakes,
        Title = "The brakes hold",
        Series = new("gorse"),
        Assumed = false,
        Milestones = [new("wheels"), new("brakes")],
        Ready = At(12, 3, 16),
        Slot = null,
        Publish = At(12, 4, 17),
        Date = new LocalDate(2026, 12, 4),
        WorkMinutes = 900,
        Chain = [],
    };

    private static Outlook Gorse() => Quiet("gorse", "Gorse, a rail trolley", SeriesState.Active) with
    {
        PromiseAssumed = false,
        LastUpload = new LocalDate(2026, 11, 7),
        DaysSilent = 23,
        DueBy = new LocalDate(2026, 11, 28),
        Forecast = [new Silence(new(2026, 11, 7), new(2026, 12, 4), 27), new Silence(new(2026, 12, 4), null, 27)],
        Alarms = [new SilenceAhead(new(2026, 11, 28), new(2026, 12, 4), 6, Brakes)],
        LastPlanned = new LocalDate(2026, 12, 4),
    };

    private static Outlook Quiet(string series, string name, SeriesState state) => new()
    {
        Series = series.Length == 0 ? default : new Id(series),
        Name = name,
        State = state,
        Promise = new Promise { LongestSilenceDays = 21 },
        PromiseAssumed = true,
        LastUpload = null,
        DaysSilent = null,
        DueBy = null,
        Past = [],
        Forecast = [],
        Alarms = [],
        LastPlanned = null,
    };

    private static PlannedStage Run(string task, string name, int minutes)
    {
        var stage = Task(task, name, "1", WorkKind.Print, minutes, At(11, 30, 20), At(12, 1, 10));
        var part = stage.Parts[0] with { Kind = PartKind.Run, Stations = [new("printer")] };
        return stage with { Kind = StageKind.Run, RunsAlone = true, Parts = [part] };
    }

    private static PlannedStage Task(string task, string name, string stage, WorkKind work, int minutes, Instant start, Instant end) =>
        Stage(StageKey.OfTask(new(task), new(stage)), name, work, minutes, start, end);

    private static PlannedStage Tail(int part, string name, int minutes, Instant start, Instant end) =>
        Stage(StageKey.OfTail(Brakes, part), name, WorkKind.Edit, minutes, start, end);

    private static PlannedStage Stage(StageKey key, string name, WorkKind work, int minutes, Instant start, Instant end) => new()
    {
        Key = key,
        Index = 0,
        Name = name,
        Series = new("gorse"),
        Kind = StageKind.Attended,
        Work = work,
        Minutes = minutes,
        Begun = false,
        RunsAlone = false,
        Parts = [new PlannedPart(PartKind.Work, start, end, [])],
        Cause = null,
        Network = null,
    };

    private static BenchProblem EmptyProblem() =>
        Assert.IsType<BenchProblemResult.Sound>(BenchProblem.Create(new BenchInput { Horizon = 1, Presence = IntervalCalendar.Never })).Problem;
}
