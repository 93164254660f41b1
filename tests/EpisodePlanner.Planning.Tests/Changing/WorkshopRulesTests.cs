using static EpisodePlanner.Planning.Tests.Sample;

namespace EpisodePlanner.Planning.Tests;

public class WorkshopRulesTests
{
    [Fact]
    public void Check_SoundWorkshop() => Assert.Empty(WorkshopRules.Check(Sound));

    [Fact]
    public void Check_EmptyWorkshop() =>
        Assert.Empty(WorkshopRules.Check(new Workshop { Format = 1, Name = "New", Zone = "UTC" }));

    [Fact]
    public void Check_UnknownZone() => Breaks.One(
        Sound with { Zone = "Europe/Dubln" },
        "$.zone",
        "There is no time zone 'Europe/Dubln' in the IANA list; write a name from it, such as 'Europe/Dublin'.");

    [Fact]
    public void Check_OffsetForZone() => Breaks.At(Sound with { Zone = "UTC+3" }, "$.zone");

    [Fact]
    public void Check_UnknownDesk() => Breaks.One(
        Sound with { Settings = Sound.Settings with { Desk = Id("desk-2") } },
        "$.settings.desk",
        "There is no place 'desk-2'; the nearest is 'desk'.");

    [Fact]
    public void Check_TailOfSettingsOutOfOrder() => Breaks.One(
        Sound with { Settings = new Settings { Tail = [new TailPart { Kind = TailKind.Checks, Hours = 2, LowHours = 2.5m }] } },
        "$.settings.tail[0].lowHours",
        "'lowHours' is 2.5, more than 'hours', 2; the order is low, likely, high.");

    [Fact]
    public void Check_AcceptedStartOfUnknownTask() => Breaks.One(
        WithAccepted(new AcceptedStart { Task = Id("weld"), Start = Moment(7, 18) }),
        "$.accepted.starts[0].task",
        "There is no task 'weld'; name one that exists.");

    [Fact]
    public void Check_AcceptedStartOfUnknownStage() => Breaks.One(
        WithAccepted(new AcceptedStart { Task = Id("paint"), Stage = Id("3"), Start = Moment(7, 18) }),
        "$.accepted.starts[0].stage",
        "There is no stage '3' in task 'paint'; the nearest is '1'.");

    [Fact]
    public void Check_AcceptedStartOfNothing() => Breaks.One(
        WithAccepted(new AcceptedStart { Start = Moment(7, 18) }),
        "$.accepted.starts[0]",
        "Work is done on one of two: name either a task or an episode.");

    [Fact]
    public void Check_ReferenceWhereThereIsNone() => Breaks.One(
        new Workshop
        {
            Format = 1,
            Name = "New",
            Zone = "UTC",
            Uploads = [new Upload { Id = Id("u"), Series = Id("s"), Date = Day(1, 1) }],
        },
        "$.uploads['u'].series",
        "There is no series 's'; there is none at all.");

    [Fact]
    public void Check_ThingsInAnyOrder()
    {
        var broken = Sound with { Machines = [], Places = [], Series = Sound.Series.Without(Id("buggy")) };
        var shuffled = broken with
        {
            Tasks = broken.Tasks.Reverse().ToKeyed(),
            Episodes = broken.Episodes.Reverse().ToKeyed(),
            Log = broken.Log.Reverse().ToKeyed(),
        };

        Assert.True(WorkshopRules.Check(broken).Count > 10);
        Assert.Equal(WorkshopRules.Check(broken), WorkshopRules.Check(shuffled));
    }

    [Fact]
    public void Check_ThousandsOfUnknownReferences()
    {
        var tasks = Enumerable.Range(0, 10_000).Select(i => new WorkTask
        {
            Id = Id($"task-{i}"),
            Name = "work",
            Stages = [SampleTasks.Attended(1)],
            Links = [SampleTasks.After($"tusk-{i}")],
        });

        Assert.Equal(10_000, WorkshopRules.Check(Sound with { Tasks = [.. Sound.Tasks, .. tasks] }).Count);
    }

    private static Workshop WithAccepted(AcceptedStart start) =>
        Sound with { Accepted = new AcceptedPlan { At = Moment(6, 21), Starts = [start] } };
}
