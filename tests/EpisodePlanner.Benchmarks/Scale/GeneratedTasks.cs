using EpisodePlanner.Checking;
using EpisodePlanner.Planning;
using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Benchmarks.Scale;

/// <summary>
/// The tasks of a generated workshop by the shares of <see cref="WorkshopMix"/>. Task n belongs to series n mod 10, so a
/// series' last tasks lie ten apart; every link leads to a lower number, so there is no circle.
/// </summary>
internal sealed class GeneratedTasks(Dice dice)
{
    private static readonly WorkKind[] ByHand = [WorkKind.Assemble, WorkKind.Wire, WorkKind.Solder, WorkKind.Paint, WorkKind.Code];

    public Keyed<WorkTask> Make(int count) => Enumerable.Range(0, count).Select(Task).ToKeyed();

    public static Id MilestoneOf(int task) =>
        new($"s{task % WorkshopMix.Series}-m{task / WorkshopMix.Series / WorkshopMix.TasksPerMilestone:0000}");

    private static Id IdOf(int task) => new($"t{task:00000}");

    private WorkTask Task(int number)
    {
        var sort = dice.Between(1, 100);
        var isRun = sort > WorkshopMix.AttendedTwice && sort <= WorkshopMix.AttendedTwice + WorkshopMix.RunThenAttended;
        return new WorkTask
        {
            Id = IdOf(number),
            Name = $"Task {number}",
            Kind = isRun ? WorkKind.Print : dice.Pick(ByHand),
            Milestone = MilestoneOf(number),
            MayRunAlone = isRun,
            Stages = [isRun ? Run() : Hands("1"), sort > WorkshopMix.AttendedTwice && !isRun ? Wait() : Hands("2")],
            Links = Links(number),
        };
    }

    private Stage Hands(string id) => new()
    {
        Id = new Id(id),
        Kind = StageKind.Attended,
        Hours = Tenths(3, 10) * 5 / 6,
        Needs = dice.Between(1, 6) switch
        {
            1 or 2 => [GeneratedStations.Benches],
            3 => [dice.Chance(50) ? GeneratedStations.Laser : GeneratedStations.Mill],
            _ => [],
        },
    };

    private Stage Run() => new()
    {
        Id = new Id("1"),
        Kind = StageKind.Run,
        Hours = Tenths(10, 90),
        Needs = [GeneratedStations.Printers],
        LoadMinutes = 10,
        UnloadMinutes = 10,
    };

    private Stage Wait() => new() { Id = new Id("2"), Kind = StageKind.Wait, Hours = dice.Between(6, 48) };

    private decimal Tenths(int least, int greatest) => dice.Between(least, greatest) / 10m;

    private ValueList<TaskLink> Links(int number)
    {
        var wanted = dice.Between(1, 3);
        var earlier = new HashSet<int>();
        for (var i = 0; i < wanted; i++)
        {
            var back = dice.Between(1, WorkshopMix.LinkReach) * WorkshopMix.Series;
            var other = number - back + (dice.Chance(WorkshopMix.SameSeries) ? 0 : dice.Between(1, WorkshopMix.Series - 1));
            if (other >= 0)
            {
                earlier.Add(other);
            }
        }

        return earlier.Select(Link).OrderBy(link => link.Task).ToValueList();
    }

    private TaskLink Link(int earlier)
    {
        var isLagged = dice.Chance(WorkshopMix.Lagged);
        return new TaskLink
        {
            Task = IdOf(earlier),
            Kind = dice.Chance(WorkshopMix.After) ? LinkKind.After : LinkKind.TogetherStart,
            LagMinutes = isLagged ? dice.Between(30, 240) : 0,
            LagClock = isLagged && dice.Chance(50) ? LagClock.Working : LagClock.Elapsed,
        };
    }
}
