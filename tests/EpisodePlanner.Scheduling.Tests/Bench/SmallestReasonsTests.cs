using EpisodePlanner.Checking;
using EpisodePlanner.Scheduling.Networks;
using static EpisodePlanner.Scheduling.Tests.Bench.Evenings;

namespace EpisodePlanner.Scheduling.Tests.Bench;

/// <summary>
/// Why a stage can never be done. Source: the definition of a smallest set, held by relaxing by hand, and cases worked out on
/// paper.
/// </summary>
public sealed class SmallestReasonsTests
{
    [Fact]
    public void Of_RandomProblems_TheSetExplainsItAndNoPartOfItDoes()
    {
        var (found, several) = (0, 0);
        for (ulong seed = 1; seed <= 60; seed++)
        {
            var problem = RandomProblems.Create(seed);
            var network = WorkshopNetwork.Of(problem);
            for (var stage = 0; stage < problem.Stages.Count; stage++)
            {
                var reasons = SmallestReasons.Of(problem, stage);
                Assert.Equal((seed, stage, network.EarlyStart[stage] < 0), (seed, stage, reasons.Count > 0));
                if (reasons.Count == 0)
                {
                    continue;
                }

                found++;
                several += reasons.Count > 1 ? 1 : 0;
                Assert.True(IsImpossible(problem, stage, reasons), $"Seed {seed}, stage {stage}: {string.Join(", ", reasons)} are not enough");
                foreach (var reason in reasons)
                {
                    Assert.False(
                        IsImpossible(problem, stage, [.. reasons.Where(other => other != reason)]),
                        $"Seed {seed}, stage {stage}: {reason} of {string.Join(", ", reasons)} is not needed");
                }
            }
        }

        TestContext.Current.TestOutputHelper?.WriteLine($"{found} impossible stages, {several} for several reasons.");
        Assert.True(found > 20 && several > 3, $"{found} found, {several} for several reasons");
    }

    [Fact]
    public void Of_LongRun_NamesPresenceAndPermission()
    {
        var input = Input(Print("Print", 600).Watched());
        Assert.Equal(
            [new(ImpossibleKind.Presence, -1), new(ImpossibleKind.Permission, 0)], SmallestReasons.Of(Sound.Problem(input), 0));
    }

    [Fact]
    public void Of_TwoWhoNeverMeet_NamesBoth()
    {
        // Ann until 22, and somebody who comes at 22.
        var input = Input(Work("Lift", 30, Ann, 6));
        input = input with { Stations = [.. input.Stations, new Station("Cas", StationKind.Person, Daily(22, 24))] };
        Assert.Equal([new(ImpossibleKind.Hours, Ann), new(ImpossibleKind.Hours, 6)], SmallestReasons.Of(Sound.Problem(input), 0));
    }

    [Fact]
    public void Of_TooLongForThePlan_NamesTheHorizon() => Assert.Equal(
        [new(ImpossibleKind.Horizon, -1)], SmallestReasons.Of(Sound.Problem(Input(Wait("Delivery", Horizon + 1))), 0));

    [Fact]
    public void Of_GreatestLagAndHours_NamesBoth()
    {
        // Ann's evenings are 20 hours apart, the coat must come 5 to 10 hours later.
        var input = Input(Work("Paint", 60, Ann), Work("Coat", 60, Ann)) with { Links = [After(0, 1, lag: 300) with { AtMost = 600 }] };
        Assert.Equal([new(ImpossibleKind.GreatestLag, 0), new(ImpossibleKind.Hours, Ann)], SmallestReasons.Of(Sound.Problem(input), 1));
    }

    /// <summary>Whether a stage is never done in a problem in which nothing but some reasons is kept.</summary>
    private static bool IsImpossible(BenchProblem problem, int stage, IReadOnlyCollection<ImpossibleReason> kept)
    {
        bool Keeps(ImpossibleKind kind, int index = -1) => kept.Contains(new ImpossibleReason(kind, index));
        var always = IntervalCalendar.Always(IntervalCalendar.MaximumMinute);
        var relaxed = Sound.Problem(new BenchInput
        {
            Horizon = Keeps(ImpossibleKind.Horizon) ? problem.Horizon : IntervalCalendar.MaximumMinute,
            Presence = Keeps(ImpossibleKind.Presence) ? problem.Presence : always,
            Stations = [.. problem.Stations.Select((s, i) => Keeps(ImpossibleKind.Hours, i) ? s : s with { Hours = always })],
            Limits = [.. problem.Limits.Select((l, i) => Keeps(ImpossibleKind.Limit, i) ? l : l with { Open = always })],
            Stages = [.. problem.Stages.Select((s, i) => s with
            {
                NotBefore = Keeps(ImpossibleKind.Date, i) ? s.NotBefore : 0,
                WaitHours = Keeps(ImpossibleKind.CountedHours, i) ? s.WaitHours : null,
                LookAt = Keeps(ImpossibleKind.CountedHours, i) ? s.LookAt : null,
                Modes = Keeps(ImpossibleKind.Permission, i) ? s.Modes : [.. s.Modes.Select(mode => mode with { RunsAlone = mode.Machine >= 0 })],
            })],
            Links = [.. problem.Links.Select((l, i) => l with
            {
                AtMost = Keeps(ImpossibleKind.GreatestLag, i) ? l.AtMost : null,
                LagHours = Keeps(ImpossibleKind.CountedHours, l.To) ? l.LagHours : null,
            })],
        });
        return WorkshopNetwork.Of(relaxed).EarlyStart[stage] < 0;
    }
}
