using EpisodePlanner.Checking.Textbook;
using NodaTime;

namespace EpisodePlanner.Planning.Tests.Plans;

/// <summary>
/// Textbook networks through a workshop file and a whole plan. Sources and their standing are beside the values, in
/// <see cref="TextbookNetworks"/>.
/// </summary>
public sealed class TextbookPlansTests
{
    public static TheoryData<string> Names => [.. TextbookNetworks.All.Select(network => network.Name)];

    [Theory, MemberData(nameof(Names))]
    public void Make_PeopleForEveryActivity_NetworkIsTheTextbooks(string name)
    {
        var network = TextbookWorkshops.Find(name);
        var plan = TextbookWorkshops.Plan(network, network.Activities.Count);

        Assert.All(network.Dates, dates => AssertDates(dates, plan));
    }

    [Theory, MemberData(nameof(Names))]
    public void Make_PeopleForEveryActivity_CriticalIsTheTextbooks(string name)
    {
        var network = TextbookWorkshops.Find(name);
        var plan = TextbookWorkshops.Plan(network, network.Activities.Count);
        var critical = plan.Stages.Where(stage => stage.Network!.Critical).Select(stage => stage.Key.Task.ToString());

        Assert.Equal(network.Critical.Select(TextbookWorkshops.IdOf).Order(), critical.Order());
    }

    [Theory, MemberData(nameof(Names))]
    public void Make_PeopleForEveryActivity_BenchEndsWithTheNetwork(string name)
    {
        var network = TextbookWorkshops.Find(name);
        var plan = TextbookWorkshops.Plan(network, network.Activities.Count);

        Assert.Equal(network.End * 60, plan.Schedule.End);
        Assert.Equal(network.End * 60, plan.Weights.EndMinute);
    }

    private static void AssertDates(TextbookDates dates, Plan plan)
    {
        var found = plan.Stage(TextbookWorkshops.IdOf(dates.Activity)).Network!;
        Assert.Equal(
            dates,
            dates with
            {
                EarlyStart = Known(dates.EarlyStart, Hours(plan, found.EarlyStart)),
                EarlyFinish = Known(dates.EarlyFinish, Hours(plan, found.EarlyFinish)),
                LateStart = Known(dates.LateStart, Hours(plan, found.LateStart)),
                LateFinish = Known(dates.LateFinish, Hours(plan, found.LateFinish)),
                TotalFloat = Known(dates.TotalFloat, found.TotalFloat / 60.0),
                FreeFloat = Known(dates.FreeFloat, found.FreeFloat / 60.0),
            });
    }

    /// <summary>The found value where the textbook has one; −1 for a part of an hour, which no textbook has.</summary>
    private static long? Known(long? textbook, double found) =>
        textbook is null ? null : found == Math.Floor(found) ? (long)found : -1;

    private static double Hours(Plan plan, Instant moment) => (moment - plan.Request.PlannedAt).TotalHours;
}
