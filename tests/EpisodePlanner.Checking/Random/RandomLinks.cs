using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Checking;

/// <summary>Links of every kind with lags of every kind, about one for each stage.</summary>
internal sealed class RandomLinks(Dice dice, ProblemSize size, RandomStations stations)
{
    private static readonly LinkKind[] Kinds =
        [LinkKind.After, LinkKind.After, LinkKind.After, LinkKind.TogetherStart, LinkKind.TogetherFinish, LinkKind.StartToFinish];

    /// <summary>Each link leads from an earlier to a later place of an order.</summary>
    public List<BenchLink> Make(int[] order)
    {
        var links = new List<BenchLink>();
        for (var to = 1; to < order.Length; to++)
        {
            for (var more = dice.Between(0, 2); more > 0; more--)
                links.Add(Link(order[dice.Between(0, to - 1)], order[to]));
        }

        return links;
    }

    private BenchLink Link(int from, int to)
    {
        var link = new BenchLink(from, to, dice.Pick(Kinds)) { AtMost = dice.Chance(20) ? dice.Between(0, size.Day * 3 / 2) : null };
        return dice.Between(1, 100) switch
        {
            <= 60 => link,
            <= 80 => link with { Lag = dice.Between(-size.Day / 4, size.Day / 2) },
            _ => link with { Lag = dice.Between(0, size.Day / 4), LagHours = stations.SomeHours() },
        };
    }
}
