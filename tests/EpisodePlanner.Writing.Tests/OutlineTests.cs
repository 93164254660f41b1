using EpisodePlanner.Planning;
using NodaTime;

namespace EpisodePlanner.Writing.Tests;

public sealed class OutlineTests
{
    [Fact]
    public void Write_UnknownEpisode_NamesTheNearest()
    {
        var result = Outline.Write(SamplePlan.Build(), new("brake-holds"));
        var reason = Assert.Single(Assert.IsType<NotWritten>(result).Reasons);
        Assert.Equal("$.episodes['brake-holds']", reason.Where);
        Assert.Equal("There is no episode 'brake-holds' to come; the nearest name is 'brakes-hold'.", reason.Says);
    }

    [Fact]
    public void Write_NoEpisodeAtAll_SaysSo()
    {
        var result = Outline.Write(SamplePlan.Build() with { Episodes = [] }, new("x"));
        Assert.Equal("There is no episode 'x', and the plan has no other.", Assert.IsType<NotWritten>(result).Reasons[0].Says);
    }

    [Fact]
    public void Write_EpisodeThatIsOut_SaysSince()
    {
        var upload = new Upload { Id = new("u0"), Series = new("gorse"), Date = new(2026, 11, 7), Episode = new("frame") };
        var plan = SamplePlan.Build().With(workshop => workshop with { Uploads = workshop.Uploads.With(upload) });
        var reason = Assert.IsType<NotWritten>(Outline.Write(plan, new("frame"))).Reasons[0];
        Assert.Contains("is public since Saturday 7 November 2026", reason.Says, StringComparison.Ordinal);
    }

    [Fact]
    public void Write_WithoutADate_SaysSoAndFlagsTimedLines()
    {
        var plan = SamplePlan.Build();
        var open = plan.Episodes[0] with { Ready = null, Publish = null, Date = null };
        var outline = Text(plan with { Episodes = [open] });
        Assert.Contains("It has no date in this plan.", outline, StringComparison.Ordinal);
        Assert.Contains("the upload has no date yet", outline, StringComparison.Ordinal);
        Assert.DoesNotContain("early view", outline, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("2026-12-03", "Leave out “The model fair")]
    [InlineData("2026-12-02", "Say “The model fair")]
    [InlineData("2026-10-31", "Leave out “The model fair is still to come”: it is not true before Sunday 1 November 2026.")]
    public void Write_TimedLine_IsHeldAgainstThePublishDate(string date, string expected)
    {
        var plan = SamplePlan.Build();
        var day = NodaTime.Text.LocalDatePattern.Iso.Parse(date).Value;
        var moved = plan.Episodes[0] with { Date = day, Publish = day.At(new LocalTime(17, 0)).InZoneLeniently(plan.Zone).ToInstant() };
        Assert.Contains(expected, Text(plan with { Episodes = [moved] }), StringComparison.Ordinal);
    }

    [Fact]
    public void Write_SaysNothingOfWhatWasLoggedLater() =>
        Assert.DoesNotContain("not yet", Text(SamplePlan.Build()), StringComparison.Ordinal);

    [Fact]
    public void Write_EveryCautionOfTheWork_IsInTheBox()
    {
        var plan = SamplePlan.Build();
        var outline = Text(plan);
        var workshop = plan.Request.Workshop;
        var tasks = workshop.Tasks.Where(task => task.Milestone is not null);
        Assert.All(tasks.SelectMany(task => Cautions.For(task, workshop)), caution =>
            Assert.Contains($"> **{caution.Topic}** at", outline, StringComparison.Ordinal));
    }

    private static string Text(Plan plan) => Assert.IsType<Written>(Outline.Write(plan, SamplePlan.Brakes)).Markdown;
}
