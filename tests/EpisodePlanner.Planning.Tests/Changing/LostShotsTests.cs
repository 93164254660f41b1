using NodaTime;

namespace EpisodePlanner.Planning.Tests.Changing;

/// <summary>What a log entry does to missing shots; the rules are the project's own, the sequences worked out by hand.</summary>
public sealed class LostShotsTests
{
    private static readonly Workshop Workshop = new()
    {
        Format = 1,
        Name = "Shed",
        Zone = "Etc/UTC",
        Tasks = [
            Task("gearbox", Shot("shaft", ShotMoment.Before), Shot("turning", ShotMoment.During), Shot("inside", ShotMoment.After) with { LostBy = new Id("weld") }),
            Task("weld"),
        ],
    };

    [Theory]
    [InlineData("gearbox", LogOutcome.Begun, "shaft")]
    [InlineData("gearbox", LogOutcome.Partly, "shaft")]
    [InlineData("gearbox", LogOutcome.Failed, "shaft")]
    [InlineData("gearbox", LogOutcome.Done, "shaft turning")]
    [InlineData("weld", LogOutcome.Begun, "inside")]
    [InlineData("weld", LogOutcome.Done, "inside")]
    public void Apply_EntryThatPassesAMoment_MarksWhatIsLost(string task, LogOutcome outcome, string lost) =>
        Assert.Equal(lost, Lost(Log(Workshop, task, outcome).Workshop));

    [Fact]
    public void Apply_StageOfSeveral_EndsWhatIsFilmedDuringItOnlyWithTheLast()
    {
        var two = Workshop.Tasks.Find(new Id("gearbox"))! with { Stages = [Hours("1"), Hours("2")] };
        var workshop = Workshop with { Tasks = Workshop.Tasks.With(two) };

        workshop = Log(workshop, "gearbox", LogOutcome.Done, "1").Workshop;
        Assert.Equal("shaft", Lost(workshop));
        Assert.Equal("shaft turning", Lost(Log(workshop, "gearbox", LogOutcome.Done, "2").Workshop));
    }

    [Fact]
    public void Apply_GotOrRepeatable_StaysAsItIs()
    {
        var gearbox = Workshop.Tasks.Find(new Id("gearbox"))!;
        var shots = gearbox.Shots.Select((shot, i) => i == 0 ? shot with { State = ShotState.Got } : shot with { OnceOnly = false, Required = true });
        var workshop = Workshop with { Tasks = Workshop.Tasks.With(gearbox with { Shots = shots.ToValueList() }) };

        var made = Log(workshop, "gearbox", LogOutcome.Done);

        Assert.Equal(workshop.Tasks, made.Workshop.Tasks);
        Assert.IsType<LogChange>(made.Made);
    }

    [Fact]
    public void Apply_MomentHadPassedBefore_IsLeftForTheMaker()
    {
        // As a file says it: begun, and the shot before it still called missing.
        var begun = Entry("gearbox", LogOutcome.Begun, null, 0);
        var workshop = Workshop with { Log = [begun] };

        Assert.Equal("turning", Lost(Log(workshop, "gearbox", LogOutcome.Done).Workshop));
    }

    [Fact]
    public void Apply_LostWithTheEntry_IsOneChangeThatIsUndoneAndRedoneAsOne()
    {
        var made = Log(Workshop, "gearbox", LogOutcome.Done);

        Assert.Equal(2, made.Made.Unfolded().Count());
        Assert.Equal(made.Workshop, Changes.Replay(Workshop, made.Made));
        Assert.Empty(Aftermath.ChangedSince(made.Made, made.Workshop));
        var undone = Assert.IsType<Applied>(Changes.Apply(made.Workshop, made.Inverse));
        Assert.Equal(Workshop, undone.Workshop);
        Assert.Equal(made.Workshop, Assert.IsType<Applied>(Changes.Apply(undone.Workshop, undone.Inverse)).Workshop);
    }

    [Fact]
    public void Apply_UndoThatBringsAnEntryBack_LosesNothingMore()
    {
        // Done, the shots called missing by hand, the entry changed to "begun": taking that back is to the letter.
        var done = Log(Workshop, "gearbox", LogOutcome.Done).Workshop;
        var asFilmed = done with { Tasks = Workshop.Tasks };
        var entry = done.Log.First();
        var corrected = Assert.IsType<Applied>(Changes.Apply(asFilmed, new LogChange(entry.Id, entry with { Outcome = LogOutcome.Begun })));

        Assert.Equal(asFilmed, Assert.IsType<Applied>(Changes.Apply(corrected.Workshop, corrected.Inverse)).Workshop);
    }

    [Fact]
    public void Between_FileWithMoreLog_KeepsTheWordOfTheFile()
    {
        var file = Workshop with { Log = [Entry("gearbox", LogOutcome.Done, null, 0)] };

        Assert.Equal(file, Assert.IsType<Applied>(Changes.Apply(Workshop, Differences.Between(Workshop, file)!)).Workshop);
    }

    private static Applied Log(Workshop workshop, string task, LogOutcome outcome, string? stage = null)
    {
        var entry = Entry(task, outcome, stage, workshop.Log.Count);
        return Assert.IsType<Applied>(Changes.Apply(workshop, new LogChange(entry.Id, entry)));
    }

    private static LogEntry Entry(string task, LogOutcome outcome, string? stage, int number) => new()
    {
        Id = new Id($"log{number}"),
        At = Instant.FromUtc(2027, 3, 9, 18 + number, 0),
        Task = new Id(task),
        Stage = stage is null ? null : new Id(stage),
        Outcome = outcome,
    };

    private static string Lost(Workshop workshop) => string.Join(
        " ", workshop.Tasks.SelectMany(task => task.Shots).Where(shot => shot.State == ShotState.Lost).Select(shot => shot.Id));

    private static WorkTask Task(string id, params Shot[] shots) =>
        new() { Id = new Id(id), Name = id, Stages = [Hours("1")], Shots = shots.ToValueList() };

    private static Stage Hours(string id) => new() { Id = new Id(id), Hours = 1 };

    private static Shot Shot(string id, ShotMoment moment) => new() { Id = new Id(id), Name = id, Moment = moment, OnceOnly = true, Minutes = 10 };
}
