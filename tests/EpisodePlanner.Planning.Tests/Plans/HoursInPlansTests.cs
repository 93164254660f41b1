namespace EpisodePlanner.Planning.Tests.Plans;

/// <summary>Hours that bind work: quiet, daylight, bookings. Planned on Monday 8 March 2027; dates computed by hand.</summary>
public sealed class HoursInPlansTests
{
    private const string Saturdays =
        """{ "id": "ann", "name": "Ann", "hours": { "weekly": [{ "days": ["saturday"], "from": "08:00", "to": "18:00" }] } }""";

    private const string Garage = $$"""
        { "id": "garage", "name": "The garage", "kind": "bench", "quiet": [{ "days": {{Trial.EveryDay}}, "from": "20:00", "to": "08:00" }] }
        """;

    [Theory]
    [InlineData("true", "2027-03-09T20:00")] // two hours an evening
    [InlineData("false", "2027-03-08T22:00")]
    public void Make_QuietHours_BindLoudWorkOnly(string loud, string expected)
    {
        var plan = new Shop { Places = Garage, Tasks = Stage($"\"needs\": [[\"garage\"]], \"loud\": {loud}") }.Plan();

        Assert.Equal(expected, plan.Finish("grind"));
    }

    [Fact]
    public void Make_QuietHours_BindLoudMachinesThatStandThere()
    {
        var plan = new Shop
        {
            Places = Garage,
            Machines = """{ "id": "saw", "name": "The saw", "kind": "saw", "place": "garage" }""",
            Tasks = Stage("\"needs\": [[\"saw\"]], \"loud\": true"),
        }.Plan();

        Assert.Equal("2027-03-09T20:00", plan.Finish("grind"));
    }

    [Fact]
    public void Make_DaylightOnly_WorksFromSunriseToSunset()
    {
        // On the equator at longitude 0 on 20 March 2027 the sun rises at 06:04 and sets at 18:11 (solar noon at 12:07:30
        // by the equation of time, a day of 12 h 7 min) [from memory of almanacs; within five minutes].
        var plan = new Shop
        {
            People = $$"""{ "id": "ann", "name": "Ann", "hours": { "weekly": [{ "days": {{Trial.EveryDay}}, "from": "00:00", "to": "00:00" }] } }""",
            Places = """{ "id": "yard", "name": "The yard", "kind": "outdoors", "daylightOnly": true, "latitude": 0, "longitude": 0 }""",
            Tasks = """{ "id": "ride", "name": "ride", "milestone": "floats", "stages": [{ "kind": "attended", "hours": 13, "needs": [["yard"]] }] }""",
        }.Plan("2027-03-20T00:00");

        var parts = plan.Stage("ride").Parts;
        Assert.Equal(2, parts.Count);
        Assert.Equal(364, (parts[0].Start - plan.Request.PlannedAt).TotalMinutes, 5.0);
        Assert.Equal(1091, (parts[0].End - plan.Request.PlannedAt).TotalMinutes, 5.0);
        Assert.Equal(1440 + 364, (parts[1].Start - plan.Request.PlannedAt).TotalMinutes, 5.0);
    }

    [Fact]
    public void Make_ByBookingOnly_IsOpenInsideItsBookings()
    {
        // 4 h of work on two mornings of two and a half hours.
        var plan = Booked("""
            { "place": "track", "from": "2027-03-13T09:00", "to": "2027-03-13T11:30" },
            { "place": "track", "from": "2027-03-20T09:00", "to": "2027-03-20T11:30" }
            """);

        Assert.Equal(("2027-03-13T09:00", "2027-03-20T10:30"), (plan.Start("grind"), plan.Finish("grind")));
    }

    [Fact]
    public void Make_ByBookingOnlyWithoutABooking_IsImpossible()
    {
        var plan = Booked("");

        Assert.Null(plan.Start("grind"));
        Assert.Equal("$.tasks['grind']", Assert.Single(plan.Findings, f => f.Kind == FindingKind.Impossible).Where);
    }

    [Fact]
    public void Make_SetUpAndTidy_AreTakenFromTheSitting()
    {
        // 18:00 to 22:00 with 15 minutes to set up and 15 to tidy: work from 18:15, 3.5 h an evening.
        var plan = new Shop
        {
            Places = """{ "id": "bench", "name": "The bench", "kind": "bench", "setUpMinutes": 15, "tidyMinutes": 15 }""",
            Tasks = Stage("\"needs\": [[\"bench\"]]"),
        }.Plan();

        Assert.Equal(("2027-03-08T18:15", "2027-03-09T18:45"), (plan.Start("grind"), plan.Finish("grind")));
    }

    private static Plan Booked(string bookings) => new Shop
    {
        People = Saturdays,
        Places = """{ "id": "track", "name": "The track", "kind": "rented", "byBookingOnly": true }""",
        Tasks = Stage("\"needs\": [[\"track\"]]"),
        More = $", \"bookings\": [{bookings}]",
    }.Plan();

    private static string Stage(string more) => $$"""
        { "id": "grind", "name": "grind", "milestone": "floats", "stages": [{ "kind": "attended", "hours": 4, {{more}} }] }
        """;
}
