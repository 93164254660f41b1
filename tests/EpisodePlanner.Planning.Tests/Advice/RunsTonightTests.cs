using NodaTime;

namespace EpisodePlanner.Planning.Tests.Advice;

public sealed class RunsTonightTests
{
    [Fact]
    public void Of_RunThatHoldsFriday_MustStartAndSaysWhatMoves()
    {
        var run = Assert.Single(Marl.Tonight(Marl.Plan()));

        Assert.True(run.Must);
        Assert.Equal(new LocalDate(2027, 3, 9), run.PutOffTo);
        var move = Assert.Single(run.Moves);
        Assert.Equal(new LocalDate(2027, 3, 12), move.Episode.Date);
        Assert.Equal(Instant.FromUtc(2027, 3, 19, 18, 0), move.To);
    }

    [Fact]
    public void Of_MovedUpload_IsWhatAPlanWithoutTheEveningGives()
    {
        var move = Assert.Single(Assert.Single(Marl.Tonight(Marl.Plan())).Moves);
        var later = Marl.With(new TaskChange(Marl.Drum.Id, Marl.Drum with { NotBefore = new LocalDate(2027, 3, 9) }));

        Assert.Equal(Marl.Plan(later).NextUpload!.Publish, move.To);
    }

    [Fact]
    public void Of_LessWorkAfterIt_CanWait()
    {
        var shorter = Marl.Drum with { Stages = [Marl.Drum.Stages[0], Marl.Drum.Stages[1] with { Hours = 4 }] };

        var run = Assert.Single(Marl.Tonight(Marl.Plan(Marl.With(new TaskChange(shorter.Id, shorter)))));

        Assert.False(run.Must);
    }

    [Fact]
    public void Of_RunGoingOn_IsNotAsked()
    {
        var begun = new LogEntry
        {
            Id = new Id("now"),
            At = Marl.MondayEvening,
            Task = Marl.Drum.Id,
            Stage = Marl.Drum.Stages[0].Id,
            Outcome = LogOutcome.Begun,
        };

        Assert.Empty(Marl.Tonight(Marl.Plan(Marl.With(new LogChange(begun.Id, begun)))));
    }

    [Fact]
    public void Of_RunTheDayAfterTomorrow_IsNotTonight()
    {
        var later = Marl.With(new TaskChange(Marl.Drum.Id, Marl.Drum with { NotBefore = new LocalDate(2027, 3, 10) }));

        Assert.Empty(Marl.Tonight(Marl.Plan(later)));
    }
}
