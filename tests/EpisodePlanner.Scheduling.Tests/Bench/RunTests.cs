using static EpisodePlanner.Scheduling.Tests.Bench.Evenings;

namespace EpisodePlanner.Scheduling.Tests.Bench;

/// <summary>Machine runs, built by hand. Source: the rules of the problem, worked out on paper.</summary>
public sealed class RunTests
{
    [Fact]
    public void Run_Alone_CrossesTheNightAndIsUnloadedWhenSomebodyComes()
    {
        // Loaded at 18:00, runs from 18:05 to 03:05, is touched at 18:00 the next evening.
        var schedule = Sound.Schedule(Input(Print("Hull", 540)));
        Assert.Equal(
            [
                new(PartKind.Load, At(0, 18), At(0, 18, 5), 0),
                new(PartKind.Run, At(0, 18, 5), At(1, 3, 5), 0),
                new(PartKind.Unload, At(1, 18), At(1, 18, 5), 0),
            ],
            schedule.Parts(0).ToArray());
    }

    [Fact]
    public void Run_EndsAtNight_BlocksItsPrinterUntilHandsCome()
    {
        var schedule = Sound.Schedule(Input(Print("Hull", 540), Print("Deck", 60)));
        Assert.Equal((At(1, 18, 5), At(1, 19, 15)), (schedule.Start(1), schedule.Finish(1)));
    }

    [Fact]
    public void Run_NotAlone_StaysWithinOneEvening()
    {
        var input = Input(Work("Sand", 60, Ann), Print("Hull", 180).Watched()) with { Links = [After(0, 1)] };
        Assert.Equal(At(1, 18), Sound.Schedule(input).Start(1));
        Assert.Empty(Sound.Schedule(Input(Print("Hull", 236).Watched())).Order);
        Assert.Equal(At(0, 22), Sound.Schedule(Input(Print("Hull", 230).Watched())).Finish(0));
    }

    [Fact]
    public void Run_OnlyJustFits_IsRefusedByItsLongLength()
    {
        var input = Input(Work("Sand", 60, Ann), Print("Hull", 160).Watched()) with { Links = [After(0, 1)] };
        Assert.Equal(At(0, 19), Sound.Schedule(input).Start(1));

        // Nine times in ten it takes up to 176 minutes; from 19:05 only 175 are left.
        var careful = input with { Stages = [input.Stages[0], input.Stages[1] with { FitMinutes = 176 }] };
        Assert.Equal(At(1, 18), Sound.Schedule(careful).Start(1));
        var alone = input with { Stages = [input.Stages[0], Print("Hull", 160) with { FitMinutes = 176 }] };
        Assert.Equal(At(0, 19), Sound.Schedule(alone).Start(1));
    }

    [Fact]
    public void Touch_WhileEverybodyWorks_TakesNobody()
    {
        var schedule = Sound.Schedule(Input(Work("Sand", 240, Ann), Print("Deck", 60) with { NotBefore = At(0, 19) }));
        Assert.Equal((At(0, 18), At(0, 22)), (schedule.Start(0), schedule.Finish(0)));
        Assert.Equal((At(0, 19), At(0, 20, 10)), (schedule.Start(1), schedule.Finish(1)));
    }

    [Fact]
    public void Load_ByHand_WaitsForTheHands()
    {
        var print = Print("Deck", 60) with
        {
            LoadTakesHands = true,
            LoadMinutes = 15,
            Modes = [new StageMode { Machine = Printer, Stations = [Ann], RunsAlone = true }],
        };
        var input = Input(Work("Sand", 90, Ann) with { Begun = true }, print);
        Assert.Equal(At(0, 19, 30), Sound.Schedule(input).Start(1));
    }

    [Fact]
    public void LookAt_OnlySomeMinutes_DelaysTheUnload()
    {
        var looked = Print("Deck", 60) with { LookAt = Daily(21, 22) };
        Assert.Equal(At(0, 21, 5), Sound.Schedule(Input(looked)).Finish(0));

        // Ends at 22:05: nobody looks before the next evening's 21:00.
        Assert.Equal(At(1, 21, 5), Sound.Schedule(Input(looked with { Minutes = 240, FitMinutes = 240 })).Finish(0));
    }

    [Fact]
    public void QuietHours_HoldTheRunButNotItsUnload()
    {
        var input = Input(Print("Part", 90).UnloadedBy(30, Ann));
        var loud = input.Stages[0] with { Modes = [input.Stages[0].Modes[0] with { Limits = [0] }] };
        var schedule = Sound.Schedule(input with { Stages = [loud with { NotBefore = At(0, 18, 25) }] });
        Assert.Equal((At(0, 18, 25), At(0, 20), At(0, 20, 30)), (schedule.Start(0), schedule.Parts(0)[1].End, schedule.Finish(0)));
        Assert.Equal(At(1, 18), Sound.Schedule(input with { Stages = [loud with { NotBefore = At(0, 18, 26) }] }).Start(0));
    }
}
