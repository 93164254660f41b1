using EpisodePlanner.Scheduling.Networks;
using FsCheck.Xunit;

namespace EpisodePlanner.Scheduling.Tests.Networks;

[Properties(Arbitrary = [typeof(NetworkDrawing)], MaxTest = 1000)]
public sealed class NetworkTimesProperties
{
    [Property]
    public void EarlyStart_AnyNetwork_IsTheLeastThatKeepsEveryLink(DrawnNetwork drawn)
    {
        var times = Build.Times(drawn.Durations, drawn.Links);
        var starts = NaiveDates.EarlyStarts(drawn);
        Assert.Equal(starts, times.EarlyStart);
        Assert.Equal(NaiveDates.End(drawn, starts), times.End);
    }

    [Property]
    public void TotalFloat_SlippedByIt_LeavesTheEndAndByOneMoreMovesIt(DrawnNetwork drawn)
    {
        var times = Build.Times(drawn.Durations, drawn.Links);
        for (var activity = 0; activity < drawn.Durations.Length; activity++)
        {
            Assert.Equal(times.End, NaiveDates.End(drawn, Slipped(drawn, times, activity, times.TotalFloat[activity])));
            Assert.Equal(
                times.End + 1,
                NaiveDates.End(drawn, Slipped(drawn, times, activity, times.TotalFloat[activity] + 1)));
        }
    }

    [Property]
    public void FreeFloat_SlippedByIt_LeavesEverySuccessorAndByOneMoreMovesOne(DrawnNetwork drawn)
    {
        var times = Build.Times(drawn.Durations, drawn.Links);
        for (var activity = 0; activity < drawn.Durations.Length; activity++)
        {
            Assert.False(MovesOthers(drawn, times, activity, times.FreeFloat[activity]));
            Assert.True(MovesOthers(drawn, times, activity, times.FreeFloat[activity] + 1));
        }
    }

    [Property]
    public void Dates_AnyNetwork_FitTogether(DrawnNetwork drawn)
    {
        var times = Build.Times(drawn.Durations, drawn.Links);
        for (var activity = 0; activity < drawn.Durations.Length; activity++)
        {
            var duration = drawn.Durations[activity];
            Assert.Equal(times.EarlyStart[activity] + duration, times.EarlyFinish[activity]);
            Assert.Equal(times.LateStart[activity] + duration, times.LateFinish[activity]);
            Assert.Equal(times.LateStart[activity] - times.EarlyStart[activity], times.TotalFloat[activity]);
            Assert.InRange(times.TotalFloat[activity], 0, times.End);
            Assert.True(times.FreeFloat[activity] >= 0);
        }
    }

    [Property]
    public void Critical_AnyNetwork_IsWhateverHasNoTotalFloat(DrawnNetwork drawn)
    {
        var times = Build.Times(drawn.Durations, drawn.Links);
        Assert.Equal(times.Network.Order.Where(activity => times.TotalFloat[activity] == 0), times.Critical);
    }

    [Property]
    public void CriticalPath_AnyNetwork_IsDrivenStepByStepFromTheStartToTheEnd(DrawnNetwork drawn)
    {
        var times = Build.Times(drawn.Durations, drawn.Links);
        var path = times.CriticalPath;
        Assert.Null(path[0].DrivingLink);
        Assert.Equal(0, times.EarlyStart[path[0].Activity]);
        Assert.Equal(times.End, times.EarlyFinish[path[^1].Activity]);
        foreach (var (before, step) in path.Zip(path.Skip(1)))
        {
            var link = drawn.Links[step.DrivingLink!.Value];
            Assert.Equal((before.Activity, step.Activity), (link.From, link.To));
            Assert.True(times.IsDriving(step.DrivingLink.Value));
        }
    }

    [Property]
    public void Of_ActivitiesAndLinksReversed_GivesTheSameDates(DrawnNetwork drawn)
    {
        var last = drawn.Durations.Length - 1;
        var times = Build.Times(drawn.Durations, drawn.Links);
        var reversed = Build.Times(
            [.. drawn.Durations.Reverse()],
            [.. drawn.Links.Select(link => link with { From = last - link.From, To = last - link.To }).Reverse()]);
        Assert.Equal(times.EarlyStart.Reverse(), reversed.EarlyStart);
        Assert.Equal(times.LateStart.Reverse(), reversed.LateStart);
        Assert.Equal(times.FreeFloat.Reverse(), reversed.FreeFloat);
    }

    private static long[] Slipped(DrawnNetwork drawn, NetworkTimes times, int activity, long by) =>
        NaiveDates.EarlyStarts(drawn, activity, times.EarlyStart[activity] + by);

    /// <summary>Whether a slip moves any successor or, where there are none, the end.</summary>
    private static bool MovesOthers(DrawnNetwork drawn, NetworkTimes times, int activity, long by)
    {
        var starts = Slipped(drawn, times, activity, by);
        var successors = drawn.Links.Where(link => link.From == activity).Select(link => link.To).ToList();
        return successors.Count == 0
            ? NaiveDates.End(drawn, starts) != times.End
            : successors.Exists(successor => starts[successor] != times.EarlyStart[successor]);
    }
}
