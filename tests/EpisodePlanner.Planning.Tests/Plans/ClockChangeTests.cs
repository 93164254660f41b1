using NodaTime;

namespace EpisodePlanner.Planning.Tests.Plans;

/// <summary>
/// Nights with a clock change through a whole plan. Acceptance answers: the project's scenario 7, after RFC 5545 §3.3.5;
/// New York changes its clocks on 14 March and 7 November 2027 [published: IANA time zone database].
/// </summary>
public sealed class ClockChangeTests
{
    [Fact]
    public void Make_SlotInTheMissingHour_IsReadWithTheOffsetBefore()
    {
        // 02:30 of offset −5: 07:30 UTC, when clocks show 03:30.
        var plan = Trial.Plan(File("2027-03-14", "02:30"), "2027-03-13T08:00");

        Assert.Equal(Instant.FromUtc(2027, 3, 14, 7, 30), plan.NextUpload!.Publish);
        Assert.Equal("2027-03-14T03:30", plan.Local(plan.NextUpload.Publish));
        Assert.Equal(new LocalDate(2027, 3, 14), plan.NextUpload.Date);
    }

    [Fact]
    public void Make_SlotInTheDoubledHour_IsTheFirst()
    {
        // 01:30 of offset −4, the first of two: 05:30 UTC.
        var plan = Trial.Plan(File("2027-11-07", "01:30"), "2027-11-06T08:00");

        Assert.Equal(Instant.FromUtc(2027, 11, 7, 5, 30), plan.NextUpload!.Publish);
        Assert.Equal(new LocalDate(2027, 11, 7), plan.NextUpload.Date);
    }

    [Theory]
    [InlineData("2027-03-13T08:00", "2027-03-14T05:00")]
    [InlineData("2027-11-06T08:00", "2027-11-07T03:00")]
    public void Make_WorkOverTheNight_TakesTheHoursTheNightHas(string now, string finish)
    {
        // Four hours from midnight: 00:00 to 05:00 by the clock where one is left out, 00:00 to 03:00 where one is doubled.
        var plan = Trial.Plan(File("2027-03-15", "18:00"), now);

        Assert.Equal(finish, plan.Finish("cut"));
    }

    private static string File(string slot, string at) => $$"""
        {
          "format": 1, "name": "Nights", "zone": "America/New_York", "settings": {{Trial.Typed(0)}},
          "people": [{ "id": "maker", "name": "Maker", "hours": { "weekly": [{ "days": ["sunday"], "from": "00:00", "to": "06:00" }] } }],
          "series": [
            { "id": "night", "name": "Night", "milestones": [{ "id": "shown", "name": "shown" }] },
            { "id": "other", "name": "Other", "milestones": [{ "id": "made", "name": "made" }] }
          ],
          "tasks": [{ "id": "cut", "name": "cut", "milestone": "made", "stages": [{ "kind": "attended", "hours": 4 }] }],
          "slotRules": [{ "from": "{{slot}}", "at": "{{at}}", "rule": "FREQ=WEEKLY;COUNT=3", "series": ["night"] }]
        }
        """;
}
