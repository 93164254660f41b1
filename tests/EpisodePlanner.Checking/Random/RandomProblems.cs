using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Checking;

/// <summary>Small, varied, sound problems for property tests; the same seed gives the same problem.</summary>
public static class RandomProblems
{
    /// <summary>2 to 12 stages of every kind on some weeks of short days, with everything a problem can say.</summary>
    public static BenchProblem Create(ulong seed) => Make(new Dice(seed), dice => new ProblemSize(
        Stages: dice.Between(2, 12),
        People: dice.Between(1, 3),
        Machines: dice.Between(0, 2),
        Places: dice.Between(0, 2),
        Day: 60,
        Days: dice.Between(7, 21)));

    /// <summary>2 to 4 stages on two or three days of a few minutes, for the exhaustive search.</summary>
    public static BenchProblem Tiny(ulong seed) => Make(new Dice(seed), dice => new ProblemSize(
        Stages: dice.Between(2, 4),
        People: dice.Between(1, 2),
        Machines: dice.Between(0, 1),
        Places: dice.Between(0, 2),
        Day: dice.Between(6, 10),
        Days: dice.Between(2, 3)));

    private static BenchProblem Make(Dice dice, Func<Dice, ProblemSize> choose)
    {
        var size = choose(dice);
        var stations = new RandomStations(dice, size);
        var stages = new RandomStages(dice, size, stations).Make();
        var input = new BenchInput
        {
            Horizon = size.Horizon,
            Presence = stations.Presence,
            Stations = stations.All,
            Limits = stations.Limits,
            Stages = stages.Stages,
            Links = stages.Links,
        };
        return BenchProblem.Create(input) switch
        {
            BenchProblemResult.Sound sound => sound.Problem,
            BenchProblemResult.Refused refused => throw new InvalidOperationException(string.Join(" ", refused.Reasons)),
            _ => throw new InvalidOperationException("Neither sound nor refused."),
        };
    }

    /// <summary>The same problem without greatest lags.</summary>
    public static BenchProblem WithoutGreatestLags(BenchProblem problem) => BenchProblem.Create(new BenchInput
    {
        Horizon = problem.Horizon,
        Presence = problem.Presence,
        Stations = problem.Stations,
        Limits = problem.Limits,
        Stages = problem.Stages,
        Links = [.. problem.Links.Select(link => link with { AtMost = null })],
    }) is BenchProblemResult.Sound sound
        ? sound.Problem
        : throw new InvalidOperationException("A sound problem is none without its greatest lags.");
}
