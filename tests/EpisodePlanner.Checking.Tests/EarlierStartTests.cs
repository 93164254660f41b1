using EpisodePlanner.Scheduling;
using static EpisodePlanner.Checking.Tests.Workbench;

namespace EpisodePlanner.Checking.Tests;

public sealed class EarlierStartTests
{
    [Fact]
    public void CouldStartEarlier_RunWithItsOwnPlaceTaken_IgnoresItself()
    {
        var print = Input(Print("Print", 20, true));
        Assert.True(CauseChecker.CouldStartEarlier(Schedule(print, Printed(11, 20, 40)), 0));
        Assert.False(CauseChecker.CouldStartEarlier(Schedule(print, Printed(10, 20, 40)), 0));
    }

    [Fact]
    public void CouldStartEarlier_GluedWaitMovesAlong()
    {
        var input = Glued(
            Attended("Glue", 10, Bob),
            Wait("Set", 30, Desk) with { GluedTo = 0 },
            Attended("Draw", 20, Ann, Desk));
        Assert.False(CauseChecker.CouldStartEarlier(Schedule(input, [Work(10, 20)], [Waited(20, 50)], [Work(0, 20)]), 0));
        var schedule = Schedule(input, [Work(30, 40)], [Waited(40, 70)], [Work(20, 40)]);
        Assert.False(CauseChecker.CouldStartEarlier(schedule, 0));
        var held = new StartCause(new Blocker(CauseKind.StationHeld, Stage: 2, Station: Desk), []);
        Assert.Null(CauseChecker.Check(schedule, 0, held));
        Assert.Null(CauseChecker.Check(schedule, 1, new StartCause(new Blocker(CauseKind.Predecessor, Stage: 0), [])));
    }

    [Fact]
    public void CouldStartEarlier_OnTinyProblems_AgreesWithEveryStart()
    {
        for (var seed = 0UL; seed < 4000; seed++)
        {
            var schedule = RandomSchedules.Create(RandomProblems.Tiny(seed), seed);
            foreach (var stage in schedule.Order.Where(i => IsAlone(schedule.Problem, i)))
            {
                var found = CauseChecker.CouldStartEarlier(schedule, stage);
                Assert.True(
                    found == HasEarlier(schedule, stage),
                    $"Seed {seed}, {schedule.Problem.Stages[stage].Name}: found {found}.");
            }
        }
    }

    // Nothing follows it, and no link holds its finish: attended work may not pause at will to finish later.
    private static bool IsAlone(BenchProblem problem, int stage) =>
        problem.Stages.All(s => s.GluedTo != stage) && problem.Links.All(l => l.From != stage)
        && (problem.Stages[stage].Kind != StageKind.Attended
            || problem.Links.All(l => l.To != stage || l.Kind is LinkKind.After or LinkKind.TogetherStart));

    // Moves the stage minute by minute and lets the schedule checker decide.
    private static bool HasEarlier(BenchSchedule schedule, int stage)
    {
        var parts = Enumerable.Range(0, schedule.Problem.Stages.Count).Select(i => schedule.Parts(i).ToArray()).ToArray();
        var old = parts[stage];
        var moves = Enumerable.Range(0, schedule.Start(stage)).SelectMany(start => Moved(schedule.Problem, stage, old, start));
        return moves.Any(moved =>
        {
            parts[stage] = moved;
            return ScheduleChecker.Check(BenchSchedule.FromParts(schedule.Problem, parts)).Count == 0;
        });
    }

    private static IEnumerable<SchedulePart[]> Moved(BenchProblem problem, int stage, SchedulePart[] old, int start)
    {
        var about = problem.Stages[stage];
        if (about.Kind == StageKind.Attended)
            return Patterns(start, about.Minutes, old[0].Mode, problem.Horizon);

        if (about.Kind == StageKind.Wait)
        {
            return Enumerable.Range(start, problem.Horizon - start + 1)
                .Select(end => new[] { old[0] with { Start = start, End = end } });
        }

        var run = start + about.LoadMinutes;
        return from unload in Enumerable.Range(run + about.Minutes, Math.Max(0, problem.Horizon - run - about.Minutes + 1))
               from mode in Enumerable.Range(0, about.Modes.Count)
               select new[]
               {
                   new SchedulePart(PartKind.Load, start, run, old[0].Mode),
                   new SchedulePart(PartKind.Run, run, run + about.Minutes, old[0].Mode),
                   new SchedulePart(PartKind.Unload, unload, unload + about.UnloadMinutes, mode),
               };
    }

    // Every way to work so many minutes in at most two stretches.
    private static IEnumerable<SchedulePart[]> Patterns(int start, int minutes, int mode, int horizon)
    {
        yield return [Work(start, start + minutes, mode)];
        for (var first = 1; first < minutes; first++)
        {
            for (var again = start + first + 1; again + minutes - first <= horizon; again++)
                yield return [Work(start, start + first, mode), Work(again, again + minutes - first, mode)];
        }
    }
}
