using EpisodePlanner.Scheduling;
using NodaTime;

namespace EpisodePlanner.Planning.Tests.Advice;

public sealed class NextThingTests
{
    [Fact]
    public void Of_LoadThatCanBeginNow_IsIt()
    {
        var thing = NextThing.Of(Marl.Plan())!;

        Assert.Equal(PartKind.Load, thing.Part.Kind);
        Assert.Equal(Marl.MondayEvening, thing.Part.Start);
        Assert.Equal("drum: print", thing.Stage.Name);
    }

    [Fact]
    public void Of_RunGoingOn_IsItsUnload()
    {
        var begun = new LogEntry
        {
            Id = new Id("now"),
            At = Marl.MondayEvening,
            Task = Marl.Drum.Id,
            Stage = Marl.Drum.Stages[0].Id,
            Outcome = LogOutcome.Begun,
        };

        var thing = NextThing.Of(Marl.Plan(Marl.With(new LogChange(begun.Id, begun))))!;

        Assert.Equal(PartKind.Unload, thing.Part.Kind);
        Assert.Equal(Instant.FromUtc(2027, 3, 9, 10, 0), thing.Part.Start);
    }

    [Fact]
    public void Of_IsNeverAfterAnyOtherWorkOfHands()
    {
        var plan = Marl.Plan();
        var first = plan.Stages.SelectMany(s => s.Parts).Where(p => p.Kind is PartKind.Work or PartKind.Load).Min(p => p.Start);

        Assert.Equal(first, NextThing.Of(plan)!.Part.Start);
    }

    [Fact]
    public void Of_NothingLeft_IsNull() =>
        Assert.Null(NextThing.Of(Marl.Plan(Marl.Workshop with { Series = [], Tasks = [], Uploads = [] })));
}
