using EpisodePlanner.Checking;
using EpisodePlanner.Scheduling.Networks;

namespace EpisodePlanner.Scheduling.Tests.Bench;

/// <summary>Random problems with real calendars. Source: computed minute by minute, from the words of the problem.</summary>
public sealed class WorkshopNetworkOracleTests
{
    [Fact]
    public void EarlyStart_TwoChoicesWithOneFinish_IsTheFirstStart()
    {
        var problem = Sound.Problem(new BenchInput
        {
            Horizon = 20,
            Presence = IntervalCalendar.Always(20),
            Stations =
            [
                new Station("Ann", StationKind.Person, IntervalCalendar.FromSpans([new(6, 10)])),
                new Station("Bob", StationKind.Person, IntervalCalendar.FromSpans([new(0, 2), new(8, 10)])),
            ],
            Stages =
            [
                new BenchStage
                {
                    Name = "Sand",
                    Kind = StageKind.Attended,
                    Minutes = 4,
                    Modes = [new StageMode { Stations = [0] }, new StageMode { Stations = [1] }],
                },
            ],
        });
        Assert.Equal((0, 10), (WorkshopNetwork.Of(problem).EarlyStart[0], WorkshopNetwork.Of(problem).EarlyFinish[0]));
    }

    [Fact]
    public void EarlyDates_RandomProblems_AreThoseFoundMinuteByMinute()
    {
        // Beside the first ones: seeds of faults that were mended.
        foreach (var seed in Enumerable.Range(1, 500).Append(1530).Append(1642).Select(number => (ulong)number))
        {
            AssertEarly(RandomProblems.Create(seed), seed);
            AssertEarly(RandomProblems.Tiny(seed), seed);
        }
    }

    [Fact]
    public void LateStart_AsItsDate_KeepsTheEndAndAMinuteMoreMovesIt()
    {
        for (ulong seed = 1; seed <= 400; seed++)
        {
            AssertLate(OneMode(RandomProblems.Create(seed)), seed);
        }
    }

    private static void AssertEarly(BenchProblem problem, ulong seed)
    {
        var network = WorkshopNetwork.Of(problem);
        int[] leftOut = [.. Enumerable.Range(0, problem.Stages.Count).Where(stage => network.UnkeptLink[stage] >= 0)];
        var oracle = new MinutePass(problem, leftOut);
        var expected = oracle.Starts.Zip(oracle.Finishes).Select((dates, i) => $"{problem.Stages[i].Name}: {dates}");
        var actual = network.EarlyStart.Zip(network.EarlyFinish).Select((dates, i) => $"{problem.Stages[i].Name}: {dates}");
        Assert.Equal((seed, string.Join('\n', expected)), (seed, string.Join('\n', actual)));
        foreach (var stage in leftOut)
        {
            // Nothing is left out for nothing: with it more could not be done.
            var all = new MinutePass(problem, [.. leftOut.Where(other => other != stage)]);
            Assert.True(all.Starts.Count(start => start >= 0) <= oracle.Starts.Count(start => start >= 0), $"Seed {seed}: {stage}");
        }
    }

    private static void AssertLate(BenchProblem problem, ulong seed)
    {
        var network = WorkshopNetwork.Of(problem);
        for (var stage = 0; stage < problem.Stages.Count; stage++)
        {
            if (network.EarlyStart[stage] >= 0 && problem.Stages[stage] is { Begun: false, GluedTo: -1 })
            {
                var late = network.LateStart[stage];
                Assert.Equal((seed, stage, End(network)), (seed, stage, End(Moved(problem, stage, late))));
                Assert.NotEqual((seed, stage, End(network)), (seed, stage, End(Moved(problem, stage, late + 1))));
            }
        }
    }

    private static WorkshopNetwork Moved(BenchProblem problem, int moved, int date) =>
        WorkshopNetwork.Of(Sound.With(problem, (i, stage) => i == moved ? stage with { NotBefore = date } : stage));

    /// <summary>The end, and how many stages are done by it.</summary>
    private static (int End, int Done) End(WorkshopNetwork network) =>
        (network.End, network.EarlyStart.Count(start => start >= 0));

    private static BenchProblem OneMode(BenchProblem problem) =>
        Sound.With(problem, (_, stage) => stage with { Modes = [stage.Modes[0]] });
}
