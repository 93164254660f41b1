using NodaTime;

namespace EpisodePlanner.Planning.Tests.Plans;

/// <summary>The rail trolley, told in parts. Acceptance answers: the project's scenario 2.</summary>
public sealed class GorseCutsTests
{
    [Fact]
    public void Make_CutAtWheelsOn_IsNotEnough()
    {
        // 36 h are nine evenings, until Thursday 18 March; 102 h end in the 26th, Monday 12 April.
        var plan = GorseTests.CutAtWheelsOn();

        Assert.Equal([new LocalDate(2027, 3, 19), new LocalDate(2027, 4, 13)], plan.Days("gorse"));
        var silences = plan.Outlook("gorse").Forecast;
        Assert.Equal([13, 25], silences.Take(2).Select(s => s.Days));
        Assert.Contains(plan.Outlook("gorse").Alarms, alarm => alarm.Ends == new LocalDate(2027, 4, 13) && alarm.DaysOver == 4);
    }

    [Fact]
    public void Make_CutAtBoth_HoldsEveryPromise()
    {
        // 36 h, 77 h and 118 h: in the evenings of 18 March, 2 April and 16 April.
        var plan = GorseTests.CutAtBoth();

        Assert.Equal(
            [new LocalDate(2027, 3, 19), new LocalDate(2027, 4, 3), new LocalDate(2027, 4, 17)], plan.Days("gorse"));
        Assert.Equal([13, 15, 14], plan.Outlook("gorse").Forecast.Take(3).Select(s => s.Days));
        Assert.Empty(plan.Outlook("gorse").Alarms);
    }
}
