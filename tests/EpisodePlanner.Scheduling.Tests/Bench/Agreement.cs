using EpisodePlanner.Scheduling.Networks;

namespace EpisodePlanner.Scheduling.Tests.Bench;

/// <summary>Holds a workshop's network that never closes against the calendar-free one.</summary>
internal static class Agreement
{
    public static void Assert(NetworkTimes times, WorkshopNetwork network)
    {
        Xunit.Assert.Equal(times.End, network.End);
        Xunit.Assert.Equal(times.EarlyStart, network.EarlyStart.Select(minute => (long)minute));
        Xunit.Assert.Equal(times.EarlyFinish, network.EarlyFinish.Select(minute => (long)minute));
        Xunit.Assert.Equal(times.LateStart, network.LateStart.Select(minute => (long)minute));
        Xunit.Assert.Equal(times.LateFinish, network.LateFinish.Select(minute => (long)minute));
        Xunit.Assert.Equal(times.FreeFloat, network.FreeFloat.Select(minute => (long)minute));
        Xunit.Assert.Equal(times.TotalFloat, Enumerable.Range(0, times.TotalFloat.Length).Select(i => (long)network.TotalFloat(i)));
        Xunit.Assert.Equal(times.Critical.Order(), Enumerable.Range(0, times.TotalFloat.Length).Where(i => network.Critical[i]));
    }
}
