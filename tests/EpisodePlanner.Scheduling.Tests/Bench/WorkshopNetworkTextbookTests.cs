using System.Collections.Immutable;
using EpisodePlanner.Checking.Textbook;
using EpisodePlanner.Scheduling.Networks;

namespace EpisodePlanner.Scheduling.Tests.Bench;

/// <summary>
/// The textbooks' networks as workshops that never close. Sources and their standing (published, computed, from memory)
/// are beside the values, in <see cref="TextbookNetworks"/>.
/// </summary>
public sealed class WorkshopNetworkTextbookTests
{
    public static TheoryData<string> Names => [.. TextbookNetworks.All.Select(network => network.Name)];

    [Theory, MemberData(nameof(Names))]
    public void EarlyDates_Textbook(string name)
    {
        AssertColumn(name, dates => dates.EarlyStart, network => network.EarlyStart);
        AssertColumn(name, dates => dates.EarlyFinish, network => network.EarlyFinish);
    }

    [Theory, MemberData(nameof(Names))]
    public void LateDates_Textbook(string name)
    {
        AssertColumn(name, dates => dates.LateStart, network => network.LateStart);
        AssertColumn(name, dates => dates.LateFinish, network => network.LateFinish);
    }

    [Theory, MemberData(nameof(Names))]
    public void Floats_Textbook(string name)
    {
        AssertColumn(name, dates => dates.TotalFloat, TotalFloats);
        AssertColumn(name, dates => dates.FreeFloat, network => network.FreeFloat);
    }

    [Theory, MemberData(nameof(Names))]
    public void Critical_Textbook(string name)
    {
        var (textbook, network) = (Find(name), Workshop(name));
        var critical = textbook.Activities.Where((_, i) => network.Critical[i]).Select(a => a.Name);
        Assert.Equal(textbook.Critical.Order(), critical.Order());
        Assert.Equal(textbook.End, network.End);
    }

    [Theory, MemberData(nameof(Names))]
    public void Of_Textbook_AgreesWithTheCalendarFreeNetwork(string name) =>
        Agreement.Assert(TimesOf(Find(name)), Workshop(name));

    private static void AssertColumn(
        string name, Func<TextbookDates, long?> expected, Func<WorkshopNetwork, ImmutableArray<int>> actual)
    {
        var (textbook, column) = (Find(name), actual(Workshop(name)));
        var known = textbook.Dates.Where(dates => expected(dates) is not null).ToList();
        Assert.Equal(
            known.Select(dates => $"{dates.Activity} {expected(dates)}"),
            known.Select(dates => $"{dates.Activity} {column[NetworkProblems.IndexOf(textbook, dates.Activity)]}"));
    }

    private static ImmutableArray<int> TotalFloats(WorkshopNetwork network) =>
        [.. Enumerable.Range(0, network.EarlyStart.Length).Select(network.TotalFloat)];

    private static TextbookNetwork Find(string name) => TextbookNetworks.All.Single(network => network.Name == name);

    private static WorkshopNetwork Workshop(string name) => WorkshopNetwork.Of(NetworkProblems.Of(Find(name)));

    private static NetworkTimes TimesOf(TextbookNetwork textbook) => Networks.Build.Times(
        [.. textbook.Activities.Select(activity => new NetworkActivity(activity.Name, activity.Duration))],
        [
            .. textbook.Links.Select(link => new NetworkLink(
                NetworkProblems.IndexOf(textbook, link.From), NetworkProblems.IndexOf(textbook, link.To), link.Kind, link.Lag)),
        ]);
}
