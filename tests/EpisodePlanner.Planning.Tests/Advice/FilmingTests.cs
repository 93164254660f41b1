using NodaTime;

namespace EpisodePlanner.Planning.Tests.Advice;

public sealed class FilmingTests
{
    private static Instant At(int day, int hour) => Instant.FromUtc(2027, 3, day, hour, 0);

    private static WorkTask With(Func<Shot, Shot> change) =>
        Marl.Drum with { Shots = Marl.Drum.Shots.Select(change).ToValueList() };

    private static LogEntry Log(string id, Instant at, LogOutcome outcome, string task) => new()
    {
        Id = new Id(id),
        At = at,
        Task = new Id(task),
        Minutes = 60,
        Outcome = outcome,
    };

    [Fact]
    public void First_OrdersByTheLatestMoment()
    {
        var shots = Filming.First(Marl.Plan());

        Assert.Equal(["the empty bed", "layers", "the teeth"], shots.Select(s => s.Shot.Name));
        Assert.Equal([Marl.MondayEvening, At(11, 17), At(11, 18)], shots.Select(s => s.Until!.Value));
    }

    [Fact]
    public void First_AfterItsTask_IsFromTheFinishUntilTheTaskThatDestroysIt()
    {
        var plan = Marl.Plan();
        var teeth = Filming.First(plan).Single(s => s.Shot.Name == "the teeth");

        Assert.Equal("close", $"{teeth.LostBy!.Id}");
        Assert.Equal(plan.Stages.Where(s => s.Key.Task == Marl.Drum.Id).Max(s => s.Finish), teeth.From);
        Assert.Equal(plan.Stages.Single(s => s.Key.Task == teeth.LostBy.Id).Start, teeth.Until);
    }

    [Fact]
    public void First_GotOrLost_IsNotAsked()
    {
        var got = With(shot => shot with { State = shot.Name == "layers" ? ShotState.Lost : ShotState.Got });

        Assert.Empty(Filming.First(Marl.Plan(Marl.With(new TaskChange(got.Id, got)))));
    }

    [Fact]
    public void First_RepeatableAndNotRequired_IsNotAsked() =>
        Assert.DoesNotContain(Filming.First(Marl.Plan()), s => s.Shot.Name == "the shelf");

    [Fact]
    public void First_TaskHasStarted_BeforeHasPassed()
    {
        var log = Log("begun", Marl.MondayEvening, LogOutcome.Partly, "drum");

        var shots = Filming.First(Marl.Plan(Marl.With(new LogChange(log.Id, log))));

        Assert.Equal("the empty bed", Assert.Single(shots, s => s.Passed).Shot.Name);
        Assert.Same(shots[^1], shots.Single(s => s.Passed));
    }

    [Fact]
    public void First_DestroyingTaskIsDone_HasPassed()
    {
        var logs = new Batch([
            new LogChange(new Id("a"), Log("a", At(8, 18), LogOutcome.Done, "drum")),
            new LogChange(new Id("b"), Log("b", At(8, 19), LogOutcome.Done, "close")),
        ]);

        Assert.All(Filming.First(Marl.Plan(Marl.With(logs))), shot => Assert.True(shot.Passed));
    }

    [Fact]
    public void First_FinishedSeries_IsLeftOut()
    {
        var series = Marl.Workshop.Series.First() with { State = SeriesState.Finished };

        Assert.Empty(Filming.First(Marl.Plan(Marl.With(new SeriesChange(series.Id, series)))));
    }
}
