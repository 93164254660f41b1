using System.Collections.Immutable;
using EpisodePlanner.Checking.Textbook;
using EpisodePlanner.Scheduling.Networks;

namespace EpisodePlanner.Scheduling.Tests.Networks;

/// <summary>Sources and their standing are beside the values, in <see cref="TextbookNetworks"/>.</summary>
public sealed class TextbookTests
{
    public static TheoryData<string> Names => [.. TextbookNetworks.All.Select(network => network.Name)];

    [Theory, MemberData(nameof(Names))]
    public void EarlyStart_Textbook(string name) =>
        AssertColumn(name, dates => dates.EarlyStart, times => times.EarlyStart);

    [Theory, MemberData(nameof(Names))]
    public void EarlyFinish_Textbook(string name) =>
        AssertColumn(name, dates => dates.EarlyFinish, times => times.EarlyFinish);

    [Theory, MemberData(nameof(Names))]
    public void LateStart_Textbook(string name) =>
        AssertColumn(name, dates => dates.LateStart, times => times.LateStart);

    [Theory, MemberData(nameof(Names))]
    public void LateFinish_Textbook(string name) =>
        AssertColumn(name, dates => dates.LateFinish, times => times.LateFinish);

    [Theory, MemberData(nameof(Names))]
    public void TotalFloat_Textbook(string name) =>
        AssertColumn(name, dates => dates.TotalFloat, times => times.TotalFloat);

    [Theory, MemberData(nameof(Names))]
    public void FreeFloat_Textbook(string name) =>
        AssertColumn(name, dates => dates.FreeFloat, times => times.FreeFloat);

    [Theory, MemberData(nameof(Names))]
    public void End_Textbook(string name) => Assert.Equal(Find(name).End, TimesOf(Find(name)).End);

    [Theory, MemberData(nameof(Names))]
    public void CriticalPath_Textbook(string name)
    {
        var times = TimesOf(Find(name));
        var path = times.CriticalPath.Select(step => times.Network.Activities[step.Activity].Name);
        Assert.Equal(Find(name).Critical, path);
    }

    [Theory, MemberData(nameof(Names))]
    public void Critical_Textbook(string name)
    {
        var times = TimesOf(Find(name));
        Assert.Equal(Find(name).Critical, times.Critical.Select(activity => times.Network.Activities[activity].Name));
    }

    private static void AssertColumn(
        string name, Func<TextbookDates, long?> expected, Func<NetworkTimes, ImmutableArray<long>> actual)
    {
        var textbook = Find(name);
        var column = actual(TimesOf(textbook));
        var known = textbook.Dates.Where(dates => expected(dates) is not null).ToList();
        Assert.Equal(
            known.Select(dates => $"{dates.Activity} {expected(dates)}"),
            known.Select(dates => $"{dates.Activity} {column[IndexOf(textbook, dates.Activity)]}"));
    }

    private static TextbookNetwork Find(string name) => TextbookNetworks.All.Single(network => network.Name == name);

    private static NetworkTimes TimesOf(TextbookNetwork textbook) => Build.Times(
        [.. textbook.Activities.Select(activity => new NetworkActivity(activity.Name, activity.Duration))],
        [
            .. textbook.Links.Select(link => new NetworkLink(
                IndexOf(textbook, link.From), IndexOf(textbook, link.To), link.Kind, link.Lag)),
        ]);

    private static int IndexOf(TextbookNetwork textbook, string activity) =>
        textbook.Activities.Select(each => each.Name).ToList().IndexOf(activity);
}
