using EpisodePlanner.Scheduling.Networks;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;

namespace EpisodePlanner.Scheduling.Tests.Networks;

public sealed class ActivityNetworkTests
{
    [Fact]
    public void TryCreate_SelfLink_IsACircleOfOne()
    {
        var circle = Assert.IsType<LinkCircle>(Assert.Single(Build.Refusals([1, 1], Build.After(1, 1))));
        Assert.Equal([1], circle.Members);
        Assert.Equal("\"a1\" waits for itself; take that link away.", circle.Sentence);
    }

    [Fact]
    public void TryCreate_CircleBetweenOtherActivities_NamesItsMembersOnlyAndInOrder()
    {
        // 0 leads into the circle 1, 3, 2 and 4 hangs behind it.
        var refusals = Build.Refusals(
            [1, 1, 1, 1, 1],
            Build.After(0, 1), Build.After(1, 3), Build.After(3, 2), Build.After(2, 1), Build.After(2, 4));
        var circle = Assert.IsType<LinkCircle>(Assert.Single(refusals));
        Assert.Equal([1, 3, 2], circle.Members);
        Assert.Equal(["a1", "a3", "a2"], circle.Names);
        Assert.Equal(
            "A circle: \"a1\", then \"a3\", then \"a2\", then \"a1\" again; take one of these links away.",
            circle.Sentence);
    }

    [Fact]
    public void TryCreate_LinksBothWays_IsACircleEvenWhereTheDatesWouldFit()
    {
        var refusals = Build.Refusals([5, 5], new(0, 1, LinkKind.TogetherStart), new(1, 0, LinkKind.TogetherStart, -9));
        Assert.IsType<LinkCircle>(Assert.Single(refusals));
    }

    [Property(MaxTest = 2000)]
    public Property TryCreate_AnyLinks_GivesAForwardOrderOrATrueCircle() =>
        Prop.ForAll(Arb.From(NetworkDrawing.Tangles), AssertOrderOrCircle);

    [Fact]
    public void TryCreate_SeveralThingsWrong_NamesThemAll()
    {
        var refusals = Build.Refusals([1, -3], new(-1, 2, LinkKind.After), new(0, 1, (LinkKind)4));
        Assert.Equal(
            [
                new NegativeDuration(1, "a1", -3),
                new UnknownActivity(0, -1, 2),
                new UnknownActivity(0, 2, 2),
                new UnknownLinkKind(1, (LinkKind)4),
            ],
            refusals);
        Assert.All(refusals, refusal => Assert.EndsWith(".", refusal.Sentence, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(long.MaxValue, 0)]
    [InlineData(0, long.MaxValue)]
    [InlineData(0, long.MinValue)]
    [InlineData(ActivityNetwork.LargestSpan, 1)]
    [InlineData(ActivityNetwork.LargestSpan, -1)]
    public void TryCreate_SpanTooLarge_IsRefused(long duration, long lag)
    {
        foreach (var kind in Enum.GetValues<LinkKind>())
            Assert.Equal([new SpanTooLarge()], Build.Refusals([duration, 0], new NetworkLink(0, 1, kind, lag)));
    }

    [Fact]
    public void TryCreate_SumPastTheLargestLong_IsRefusedAndNotWrapped() =>
        Assert.Equal([new SpanTooLarge()], Build.Refusals([long.MaxValue, long.MaxValue, 2]));

    [Fact]
    public void TryCreate_ListsChangedAfterwards_KeepsItsOwn()
    {
        var activities = new List<NetworkActivity> { new("weld frame", 12) };
        var links = new List<NetworkLink>();
        Assert.True(ActivityNetwork.TryCreate(activities, links, out var network, out _));
        activities.Clear();
        links.Add(Build.After(0, 0));
        Assert.Single(network.Activities);
        Assert.Empty(network.Links);
    }

    [Fact]
    public void LinksOutOf_SeveralLinks_AscendingAndOnlyItsOwn()
    {
        var network = Build.Times([1, 1, 1], Build.After(0, 1), Build.After(1, 2), Build.After(0, 2)).Network;
        Assert.Equal([0, 2], network.LinksOutOf(0).ToArray());
        Assert.Equal([1, 2], network.LinksInto(2).ToArray());
        Assert.Empty(network.LinksOutOf(2).ToArray());
    }

    private static void AssertOrderOrCircle(DrawnNetwork drawn)
    {
        NetworkActivity[] activities = [.. drawn.Durations.Select(duration => new NetworkActivity("any", duration))];
        if (ActivityNetwork.TryCreate(activities, drawn.Links, out var network, out var refusals))
        {
            Assert.Equal(Enumerable.Range(0, activities.Length), network.Order.Order());
            var place = network.Order;
            Assert.All(drawn.Links, link => Assert.True(place.IndexOf(link.From) < place.IndexOf(link.To)));
            return;
        }

        var members = Assert.IsType<LinkCircle>(Assert.Single(refusals)).Members;
        Assert.Equal(members.Length, members.Distinct().Count());
        Assert.Equal(members.Min(), members[0]);
        foreach (var (from, to) in members.Zip([.. members[1..], members[0]]))
            Assert.Contains(drawn.Links, link => link.From == from && link.To == to);
    }
}
