using System.Text.Json;
using NodaTime;
using NodaTime.Text;

namespace EpisodePlanner.Web.Tests.CommandLine;

public sealed class DemoDatesTests
{
    private static async Task<JsonElement> Plan(DateTimeOffset now) => JsonSerializer.Deserialize<JsonElement>(
        (await Shell.RunAt(now, "plan", Papers.FirstLines, "--format", "json")).Output);

    /// <summary>Every date on the bench, of the episodes and of the silences, as days and local times.</summary>
    private static IEnumerable<(int Day, string Time)> Dates(JsonElement plan, LocalDate from)
    {
        var texts = plan.GetProperty("tasks").EnumerateArray().Concat(plan.GetProperty("episodes").EnumerateArray().SelectMany(e => e.GetProperty("tail").EnumerateArray()))
            .SelectMany(task => (string[])["start", "finish"], (task, end) => task.GetProperty("bench").GetProperty(end).GetString()!)
            .Concat(plan.GetProperty("episodes").EnumerateArray().Select(e => e.GetProperty("publish").GetString()!))
            .Concat(plan.GetProperty("channel").GetProperty("alarms").EnumerateArray().Select(a => a.GetProperty("ends").GetString()!));
        return texts.Select(text => (Period.DaysBetween(from, LocalDatePattern.Iso.Parse(text[..10]).Value), text[10..]));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(5)]
    [InlineData(8)]
    [InlineData(52)]
    [InlineData(521)]
    [InlineData(-52)]
    public async Task Plan_WeeksLater_IsTheSamePlanShifted(int weeks)
    {
        var day = new LocalDate(2026, 11, 25);
        var here = await Plan(Shell.Anchor);
        var there = await Plan(Shell.Anchor.AddDays(7 * weeks));

        Assert.Equal(weeks, there.GetProperty("demoMovedWeeks").GetInt32());
        Assert.Equal(Dates(here, day), Dates(there, day.PlusWeeks(weeks)));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(6)]
    public async Task Plan_DaysLaterInTheWeek_MovesByWholeWeeksOnly(int days)
    {
        var plan = await Plan(Shell.Anchor.AddDays(70 + days));

        Assert.Equal(10, plan.GetProperty("demoMovedWeeks").GetInt32());
    }

    [Fact]
    public async Task Plan_Moved_SaysSoInOneLine()
    {
        var answer = await Shell.RunAt(Shell.Anchor.AddDays(7), "plan", Papers.FirstLines);

        Assert.Contains("moved by 1 week forward", answer.Flat, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Plan_WithNow_StaysWhereItIs()
    {
        var answer = await Shell.RunAt(Shell.Anchor.AddDays(700), "plan", Papers.FirstLines, "--now", "2026-11-25T18:00:00Z");

        Assert.DoesNotContain("A demo", answer.Output, StringComparison.Ordinal);
        Assert.Contains("Friday 29 January", answer.Output, StringComparison.Ordinal);
    }
}
