using EpisodePlanner.Scheduling.Networks;
using FsCheck;
using FsCheck.Fluent;

namespace EpisodePlanner.Scheduling.Tests.Networks;

/// <summary>Activities and links as a property is given them.</summary>
public sealed record DrawnNetwork(long[] Durations, NetworkLink[] Links)
{
    public override string ToString() => $"{string.Join(' ', Durations)}; {string.Join(' ', Links)}";
}

/// <summary>Draws small networks with every kind of link, lags of both signs and activities of no length.</summary>
public static class NetworkDrawing
{
    /// <summary>Networks without a circle: links lead forward in an order that is drawn too.</summary>
    public static Arbitrary<DrawnNetwork> Networks() => Arb.From(
        from count in Gen.Choose(1, 9)
        from order in Gen.Shuffle(Enumerable.Range(0, count).ToArray())
        from durations in Long(0, 6).ArrayOf(count)
        from links in Links(count)
        select new DrawnNetwork(durations, [.. links.Where(IsNoLoop).Select(link => Forward(link, order))]),
        Shrink);

    /// <summary>Any links between any activities, so that most such networks have circles.</summary>
    public static Gen<DrawnNetwork> Tangles { get; } =
        from count in Gen.Choose(1, 9)
        from links in Links(count)
        select new DrawnNetwork(new long[count], links);

    private static Gen<NetworkLink[]> Links(int activities) =>
        from count in Gen.Choose(0, 2 * activities)
        from links in Link(activities).ArrayOf(count)
        select links;

    private static Gen<NetworkLink> Link(int activities) =>
        from one in Gen.Choose(0, activities - 1)
        from other in Gen.Choose(0, activities - 1)
        from kind in Gen.Elements(Enum.GetValues<LinkKind>())
        from lag in Long(-5, 5)
        select new NetworkLink(one, other, kind, lag);

    private static Gen<long> Long(int low, int high) => Gen.Choose(low, high).Select(value => (long)value);

    private static bool IsNoLoop(NetworkLink link) => link.From != link.To;

    private static NetworkLink Forward(NetworkLink link, int[] order) => link with
    {
        From = order[Math.Min(link.From, link.To)],
        To = order[Math.Max(link.From, link.To)],
    };

    private static IEnumerable<DrawnNetwork> Shrink(DrawnNetwork drawn) => drawn.Links.Select(
        (_, without) => drawn with { Links = [.. drawn.Links.Where((_, index) => index != without)] });
}
