using NodaTime;

namespace EpisodePlanner.Planning.Tests.Advice;

public sealed class PublishReasonTests
{
    private static PublishReason Of(Workshop workshop)
    {
        var plan = Marl.Plan(workshop);
        return PublishReason.Of(plan, plan.NextUpload!)!;
    }

    private static Workshop With(Func<Settings, Settings> change) => Marl.With(new SettingsChange(change(Marl.Workshop.Settings)));

    [Fact]
    public void Of_NothingBetween_IsTheFirstSlot()
    {
        var reason = Of(Marl.Workshop);

        Assert.Equal(Instant.FromUtc(2027, 3, 11, 18, 0), reason.Earliest);
        Assert.Empty(reason.Passed);
        Assert.False(reason.Pinned);
    }

    [Fact]
    public void Of_LeadAndEarlyView_AreSaid()
    {
        var reason = Of(With(s => s with { SafetyLeadHours = 6, EarlyViewHours = 24 }));

        Assert.Equal((360, 1440), (reason.SafetyMinutes, reason.EarlyViewMinutes));
        Assert.Equal(Instant.FromUtc(2027, 3, 13, 0, 0), reason.Earliest);
        Assert.Empty(reason.Passed);
    }

    [Fact]
    public void Of_DayToAvoid_IsPassed()
    {
        var passed = Assert.Single(Of(With(s => s with { DaysToAvoid = [new LocalDate(2027, 3, 12)] })).Passed);

        Assert.Equal(PassedSlotReason.DayToAvoid, passed.Why);
        Assert.Equal(new LocalDateTime(2027, 3, 12, 18, 0), passed.Opening);
    }

    [Fact]
    public void Of_LastUploadTooNear_IsPassed()
    {
        var passed = Assert.Single(Of(With(s => s with { DaysBetweenUploads = 10 })).Passed);

        Assert.Equal((PassedSlotReason.TooNear, (string?)null), (passed.Why, passed.Other));
    }
}
