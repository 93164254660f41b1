using EpisodePlanner.Planning;

namespace EpisodePlanner.Writing.Tests;

public sealed class LetterTests
{
    [Theory]
    [InlineData(" will ")]
    [InlineData(" guarantee")]
    [InlineData(" certain")]
    [InlineData(" % ")]
    public void Write_PlannedDates_AreNeverPromised(string word) =>
        Assert.DoesNotContain(word, Text(SamplePlan.Build()), StringComparison.OrdinalIgnoreCase);

    [Fact]
    public void Write_NothingPlanned_SaysSo() =>
        Assert.Contains("Nothing is planned for this series yet.", Text(SamplePlan.Build()), StringComparison.Ordinal);

    [Fact]
    public void Write_NoSeries_SaysSo() => Assert.Contains(
        "No series is being told, and nothing is planned.", Text(SamplePlan.Build() with { Series = [] }), StringComparison.Ordinal);

    [Fact]
    public void Write_AssumedPromise_IsNeverCalledAPromise()
    {
        var plan = SamplePlan.Build();
        var letter = Text(plan with { Series = [plan.Series[0] with { PromiseAssumed = true }] });
        Assert.DoesNotContain("The promise is", letter, StringComparison.Ordinal);
        Assert.Contains("That makes 27 days without an upload, from Saturday 7 November 2026 to Friday 4 December 2026.", letter, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(27, "The plan still says so.")]
    [InlineData(20, "14 days later.")]
    public void Write_ToldDate_IsHeldAgainstThePlan(int day, string expected)
    {
        var plan = SamplePlan.Build();
        var date = plan.Request.Workshop.ToldDates.Single() with { Date = new(2026, 11, day) };
        var moved = plan.Episodes[0] with { Date = day == 27 ? date.Date : plan.Episodes[0].Date };
        var letter = Text((plan with { Episodes = [moved] }).With(workshop => workshop with { ToldDates = [date] }));
        Assert.Contains(expected, letter, StringComparison.Ordinal);
    }

    [Fact]
    public void Write_EpisodeThatIsOut_ToldDateIsNoLongerNews()
    {
        var upload = new Upload { Id = new("u2"), Series = new("gorse"), Date = new(2026, 11, 29), Episode = SamplePlan.Brakes };
        var plan = SamplePlan.Build().With(workshop => workshop with { Uploads = workshop.Uploads.With(upload) });
        Assert.DoesNotContain("What was said before", Text(plan), StringComparison.Ordinal);
    }

    [Fact]
    public void Write_AfterANewUpload_TellsOnlyWhatCameAfterIt()
    {
        var upload = new Upload { Id = new("u2"), Series = new("gorse"), Date = new(2026, 11, 21) };
        var letter = Text(SamplePlan.Build().With(workshop => workshop with { Uploads = workshop.Uploads.With(upload) }));
        Assert.Contains("Since the last upload on Saturday 21 November 2026: 1 h by hand and 14 h on machines.", letter, StringComparison.Ordinal);
        Assert.DoesNotContain("brake test", letter, StringComparison.Ordinal);
    }

    [Fact]
    public void Write_RestingWithoutADay_SaysThatNoneIsSet()
    {
        var letter = Text(SamplePlan.Build().With(workshop => workshop with
        {
            Series = workshop.Series.With(workshop.Series.Find(new("sedge"))! with { RestingUntil = null }),
        }));
        Assert.Contains("This series rests; no day is set for its return.", letter, StringComparison.Ordinal);
    }

    private static string Text(Plan plan) => Letter.Write(plan).Markdown;
}
