using EpisodePlanner.Scheduling;
using static EpisodePlanner.Checking.Tests.Workbench;

namespace EpisodePlanner.Checking.Tests;

/// <summary>A right schedule without slack: whichever part moves by a minute, a rule breaks.</summary>
public sealed class MutationTests
{
    private static readonly BenchInput Workshop = Glued(
        Attended("Cut", 95, Ann, Bench) with { MinimumBlock = 5 },
        Print("Print", 40, false, Bob) with { LoadTakesHands = true, NotBefore = 58, LookAt = Open((121, 122)) },
        Attended("Draw", 10, Bob, Desk),
        Wait("Set", 20, Desk) with { GluedTo = 2 },
        Attended("Weld", 8, Bob, Shed));

    private static readonly BenchInput Tight = Workshop with
    {
        Links =
        [
            .. Workshop.Links,
            new BenchLink(1, 2, LinkKind.After) { Lag = -80 },
            new BenchLink(2, 4, LinkKind.TogetherStart) { Lag = 12 },
        ],
    };

    private static readonly SchedulePart[][] Parts =
    [
        [Work(5, 97), Work(125, 128)],
        Printed(58, 40, 121),
        [Work(44, 54)],
        [Waited(54, 74)],
        [Work(62, 70)],
    ];

    [Fact]
    public void Check_UnmovedSchedule_IsRight() => AssertRight(Tight, Parts);

    [Theory]
    [InlineData(0, 0, -1, "setting up at the bench")]
    [InlineData(0, 0, 1, "tidying at the bench")]
    [InlineData(0, 1, -1, "setting up at the bench")]
    [InlineData(1, 0, -1, "before its date")]
    [InlineData(1, 0, 1, "overlap")]
    [InlineData(1, 1, -1, "overlap")]
    [InlineData(1, 1, 1, "may not run alone")]
    [InlineData(1, 2, -1, "can be noticed")]
    [InlineData(2, 0, -1, "'Print' allows it not before 44")]
    [InlineData(2, 0, 1, "the finish it is glued to")]
    [InlineData(3, 0, -1, "has it until 54")]
    [InlineData(3, 0, 1, "the finish it is glued to")]
    [InlineData(4, 0, -1, "too soon for Bob after 'Print' at 60")]
    public void Check_PartMovedByAMinute_IsCaught(int stage, int part, int by, string words)
    {
        var moved = Parts.Select(parts => parts.ToArray()).ToArray();
        var old = moved[stage][part];
        moved[stage][part] = old with { Start = old.Start + by, End = old.End + by };
        var found = ScheduleChecker.Check(Schedule(Tight, moved));
        Assert.Contains(found, sentence => sentence.Contains(words, StringComparison.Ordinal));
    }

    [Fact]
    public void Check_PartOfRandomScheduleCutOrStretched_IsCaught()
    {
        for (var seed = 0UL; seed < 400; seed++)
        {
            var schedule = RandomSchedules.Create(RandomProblems.Create(seed), seed);
            foreach (var stage in schedule.Order.Where(i => schedule.Finish(i) > schedule.Start(i)))
            {
                Assert.NotEmpty(ScheduleChecker.Check(Mutated(schedule, stage, p => p with { End = p.End + 1 })));
                Assert.NotEmpty(ScheduleChecker.Check(Mutated(schedule, stage, p => p with { End = p.End - 1 })));
            }
        }
    }

    private static BenchSchedule Mutated(BenchSchedule schedule, int stage, Func<SchedulePart, SchedulePart> change)
    {
        var parts = Enumerable.Range(0, schedule.Problem.Stages.Count).Select(i => schedule.Parts(i).ToArray()).ToArray();
        parts[stage][^1] = change(parts[stage][^1]);
        return BenchSchedule.FromParts(schedule.Problem, parts);
    }
}
