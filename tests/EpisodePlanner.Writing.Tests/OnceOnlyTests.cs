using EpisodePlanner.Planning;

namespace EpisodePlanner.Writing.Tests;

/// <summary>Scenario 13 of the project's scenarios: the shot inside the gearbox, before the closing weld.</summary>
public sealed class OnceOnlyTests
{
    [Fact]
    public void Write_BeforeTheWeld_SaysFromWhenAndByWhen()
    {
        var section = Section(SamplePlan.Build(), "Film before it is gone");
        Assert.Contains("“inside the gearbox” (30 min)", section, StringComparison.Ordinal);
        Assert.Contains("planned for Tuesday 1 December 2026 at 21:00", section, StringComparison.Ordinal);
        Assert.Contains("At the latest by Wednesday 2 December 2026 at 19:00", section, StringComparison.Ordinal);
    }

    [Fact]
    public void Write_WeldLoggedFirst_TheShotIsLostFlaggedAndNeverClaimed()
    {
        var entry = new LogEntry { Id = new("w"), Task = new("weld"), At = SampleWorkshop.At(11, 29, 22), Minutes = 60, Outcome = LogOutcome.Partly };
        var plan = SamplePlan.Build().With(workshop => workshop with { Log = workshop.Log.With(entry) });
        Assert.Contains("they are lost: “inside the gearbox” (gone by Sunday 29 November 2026)", Text(plan), StringComparison.Ordinal);
        Assert.Contains("“inside the gearbox”: “closing weld” had begun by Sunday 29 November 2026", Section(plan, "Pictures lost"), StringComparison.Ordinal);
        Assert.Equal("", Section(plan, "Film before it is gone"));
        AssertNotClaimed(plan, "inside the gearbox");
    }

    [Fact]
    public void Write_LostShots_AreNeverClaimed()
    {
        var plan = SamplePlan.Build();
        AssertNotClaimed(plan, "the old lever in one piece");
        AssertNotClaimed(plan, "smoke off the shoes");
    }

    [Fact]
    public void Write_RepeatableShotWhoseMomentPassed_CanBeTakenAgain()
    {
        var plan = SamplePlan.Build().With(workshop => workshop with
        {
            Tasks = workshop.Tasks.With(workshop.Tasks.Find(new("turn"))! with
            {
                Shots = [new Shot { Id = new("tool"), Name = "the tool biting" }],
            }),
        });
        Assert.Contains("“the tool biting”: “turn the wheels” was done on Saturday 14 November 2026", Section(plan, "Still to film"), StringComparison.Ordinal);
        AssertNotClaimed(plan, "the tool biting");
    }

    private static void AssertNotClaimed(Plan plan, string shot) =>
        Assert.DoesNotContain(shot, Section(plan, "Pictures taken"), StringComparison.Ordinal);

    private static string Text(Plan plan) => Assert.IsType<Written>(Outline.Write(plan, SamplePlan.Brakes)).Markdown;

    private static string Section(Plan plan, string heading) =>
        Text(plan).Split("\n## ").FirstOrDefault(part => part.StartsWith(heading, StringComparison.Ordinal)) ?? "";
}
