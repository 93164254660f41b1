using EpisodePlanner.Scheduling;
using EpisodePlanner.Scheduling.Networks;
using EpisodePlanner.Scheduling.Packed;

namespace EpisodePlanner.Checking;

/// <summary>Small, varied, sound plain problems for property tests; the same seed gives the same problem.</summary>
public static class RandomPlainProblems
{
    /// <summary>1 to 30 activities, 0 to 6 stations of up to 100 units, lags now and then.</summary>
    public static PackedProblem Create(ulong seed)
    {
        var dice = new Dice(seed);
        var longest = dice.Pick([1, 10, 40, 500]);
        return Make(dice, dice.Between(1, 30), [.. Enumerable.Range(0, dice.Between(0, 6)).Select(_ => dice.Between(1, 100))], longest);
    }

    /// <summary>2 to 5 activities of at most 4 units of time, for brute force.</summary>
    public static PackedProblem Tiny(ulong seed)
    {
        var dice = new Dice(seed);
        return Make(dice, dice.Between(2, 5), [.. Enumerable.Range(0, dice.Between(1, 2)).Select(_ => dice.Between(1, 4))], 4);
    }

    /// <summary>2 to 12 activities, each of which takes some of 1 to 4 stations of one unit.</summary>
    public static PackedProblem Unary(ulong seed)
    {
        var dice = new Dice(seed);
        return Make(dice, dice.Between(2, 12), [.. Enumerable.Repeat(1, dice.Between(1, 4))], dice.Pick([5, 60, 400]));
    }

    /// <summary>A list in which every activity follows those it waits for.</summary>
    public static int[] Order(PackedProblem problem, Dice dice)
    {
        var left = Enumerable.Range(0, problem.Count).ToList();
        var order = new List<int>();
        while (left.Count > 0)
        {
            var ready = left.Where(i => !problem.Network.Links.Any(link => link.To == i && left.Contains(link.From))).ToList();
            order.Add(dice.Pick(ready));
            left.Remove(order[^1]);
        }

        return [.. order];
    }

    private static PackedProblem Make(Dice dice, int count, int[] capacities, int longest)
    {
        // Links lead forward in a shuffled order, so that indices say nothing about precedence.
        var order = dice.Shuffle(count);
        var links = from j in Enumerable.Range(1, count - 1)
                    from i in Enumerable.Range(0, j)
                    where dice.Chance(Math.Max(4, 150 / count))
                    select new NetworkLink(order[i], order[j], LinkKind.After, dice.Chance(20) ? dice.Between(0, longest) : 0);
        var activities = Enumerable.Range(0, count).Select(i => new NetworkActivity($"a{i}", dice.Between(0, longest)));
        if (!ActivityNetwork.TryCreate(activities, links, out var network, out _))
            throw new InvalidOperationException("The network is refused.");

        return Sound(new PackedInput
        {
            Network = network,
            Stations = [.. capacities.Select((capacity, i) => new PackedStation($"s{i}", capacity))],
            Demands = [.. Enumerable.Range(0, count).Select(_ => Demand(dice, capacities))],
        });
    }

    private static int[] Demand(Dice dice, int[] capacities) =>
        [.. capacities.Select(capacity => dice.Chance(60) ? dice.Between(0, capacity) : 0)];

    private static PackedProblem Sound(PackedInput input) => PackedProblem.Create(input) switch
    {
        PackedProblemResult.Sound sound => sound.Problem,
        PackedProblemResult.Refused refused => throw new InvalidOperationException(string.Join(' ', refused.Reasons)),
        _ => throw new InvalidOperationException("Neither sound nor refused."),
    };
}
