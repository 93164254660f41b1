using static EpisodePlanner.Scheduling.Tests.Bench.Evenings;

namespace EpisodePlanner.Scheduling.Tests.Bench;

/// <summary>
/// A run's unload by hand is an item of its own and its machine is held with an open end. Source: the rules of the
/// problem, worked out on paper.
/// </summary>
public sealed class DeferredUnloadTests
{
    private static readonly BenchStage Hull = Print("Hull", 60).UnloadedBy(30, Ann);

    [Fact]
    public void Unload_WantedMachine_HappensBeforeTheNextLoad()
    {
        // Hull runs 18:05–19:05 and takes Ann until 19:35; only then is Deck loaded.
        var schedule = Sound.Schedule(Input(Hull, Print("Deck", 60)));
        Assert.Equal(new(PartKind.Unload, At(0, 19, 5), At(0, 19, 35), 0), schedule.Parts(0)[2]);
        Assert.Equal(At(0, 19, 35), schedule.Start(1));
    }

    [Fact]
    public void Unload_NobodyWantsTheMachine_LetsMorePressingWorkGoFirst()
    {
        // Sand comes first by its due date and is ready while Hull still runs; the printer simply stays full.
        var input = Input(Hull, Work("Sand", 120, Ann), Work("Pack", 30, Ann)) with { Links = [After(1, 2)] };
        var found = Sound.Search(Sound.Problem(input), accepted: [1, 2, 0]);
        Assert.Equal("the accepted order", found.Rule);
        Assert.Equal(At(0, 20, 30), found.Schedule.Parts(0)[2].Start);
        Assert.Equal(At(0, 20, 30), found.Schedule.Finish(2));
    }

    [Fact]
    public void Unload_NeverPossible_LeavesTheRunOutAndTheMachineFree()
    {
        var input = Input(Print("Hull", 60).UnloadedBy(241, Ann), Print("Deck", 60));
        var schedule = Sound.Search(Sound.Problem(input), accepted: [0, 1]).Schedule;
        Assert.False(schedule.IsPlaced(0));
        Assert.True(schedule.IsPlaced(1));
    }

    [Fact]
    public void Unload_OneOfTwoPeople_IsDoneByTheFirstWhoIsFree()
    {
        var print = Hull with
        {
            Modes =
            [
                new StageMode { Machine = Printer, Stations = [Ann], RunsAlone = true },
                new StageMode { Machine = Printer, Stations = [Bob], RunsAlone = true },
            ],
        };
        var input = Input(Work("Sand", 240, Ann) with { Begun = true }, print);
        Assert.Equal(new(PartKind.Unload, At(0, 20), At(0, 20, 30), 1), Sound.Schedule(input).Parts(1)[2]);
    }

    [Fact]
    public void Unload_OvernightRun_TakesHandsTheNextEvening()
    {
        var input = Input(Print("Hull", 540).UnloadedBy(30, Ann), Work("Sand", 240, Ann) with { NotBefore = At(1, 18) });
        var schedule = Sound.Search(Sound.Problem(input), accepted: [0, 1]).Schedule;
        Assert.Equal(At(1, 18), schedule.Parts(0)[2].Start);
        Assert.Equal(At(1, 18, 30), schedule.Start(1));
    }

    [Fact]
    public void Begun_RunFromNow_IsUnloadedAndFreesItsPrinter()
    {
        var begun = Print("Hull", 1200) with { Begun = true };
        var schedule = Sound.Schedule(Input(Print("Deck", 60), begun));
        Assert.Equal((0, At(0, 20, 5)), (schedule.Start(1), schedule.Finish(1)));
        Assert.Equal(At(0, 20, 5), schedule.Start(0));
    }
}
