namespace EpisodePlanner.Planning.Tests.Plans;

/// <summary>
/// Lags and filming, in evenings from 18:00 to 22:00 from Monday 8 March. Dates computed by hand.
/// </summary>
public sealed class LagsInPlansTests
{
    private const string Oven =
        $$"""{ "id": "oven", "name": "The oven", "kind": "oven", "hours": { "weekly": [{ "days": {{Trial.EveryDay}}, "from": "18:00", "to": "19:00" }] } }""";

    [Theory]
    [InlineData("\"lagMinutes\": 60", "2027-03-08T21:00")]
    [InlineData("\"lagMinutes\": 240", "2027-03-09T18:00")] // midnight
    [InlineData("\"lagMinutes\": 240, \"lagClock\": \"working\"", "2027-03-09T20:00")] // 2 h on Monday, 2 h on Tuesday
    [InlineData("\"lagMinutes\": 120, \"lagClock\": \"working\", \"lagStation\": \"oven\"", "2027-03-10T19:00")] // an hour a day
    public void Make_Lag_CountsElapsedOrWorkingMinutes(string lag, string expected) =>
        Assert.Equal(expected, Linked(lag, "").Start("then"));

    [Theory]
    [InlineData("\"lagMinutes\": 600", "2027-03-08T18:00")] // over since 06:00
    [InlineData("\"lagMinutes\": 960", "2027-03-08T18:00")] // noon
    [InlineData("\"lagMinutes\": 1380", "2027-03-08T19:00")]
    [InlineData("\"lagMinutes\": 120, \"lagClock\": \"working\"", "2027-03-08T20:00")]
    [InlineData("\"lagMinutes\": 120, \"lagClock\": \"working\", \"lagStation\": \"oven\"", "2027-03-09T19:00")]
    public void Make_LagAfterFinishedWork_HasTimeGoneOff(string lag, string expected)
    {
        // Done on Sunday at 20:00: nobody was there since, and the oven was closed.
        var log = """{ "at": "2027-03-07T20:00:00Z", "task": "first", "outcome": "done", "minutes": 120 }""";

        Assert.Equal(expected, Linked(lag, log).Start("then"));
    }

    [Fact]
    public void Make_WorkingLagAfterFinishedWork_HasOpenMinutesGoneOff()
    {
        // Done on Friday at 20:00: 2 h of Friday are gone, one of Monday is left.
        var log = """{ "at": "2027-03-05T20:00:00Z", "task": "first", "outcome": "done", "minutes": 120 }""";

        Assert.Equal("2027-03-08T19:00", Linked("\"lagMinutes\": 180, \"lagClock\": \"working\"", log).Start("then"));
    }

    [Fact]
    public void Make_FilmingMinutes_GoToTheFirstAttendedStage()
    {
        // 5 h print without anybody (allowed) until 23:00; then 4 h 30 min from Tuesday 18:00, then 1 h.
        var plan = Filmed("");

        Assert.Equal([300, 270, 60], plan.Stages.Where(s => !s.Key.IsTail).OrderBy(s => s.Key.Stage).Select(s => s.Minutes));
        Assert.Equal("2027-03-10T19:30", plan.Finish("mast", "3"));
    }

    [Fact]
    public void Make_FirstAttendedStageIsDone_FilmingIsOver()
    {
        var log = """
            { "at": "2027-03-05T08:00:00Z", "task": "mast", "stage": "1", "outcome": "done", "minutes": 300 },
            { "at": "2027-03-05T20:00:00Z", "task": "mast", "stage": "2", "outcome": "done", "minutes": 270 }
            """;

        Assert.Equal("2027-03-08T19:00", Filmed(log).Finish("mast", "3"));
    }

    private static Plan Linked(string lag, string log) => new Shop
    {
        Machines = Oven,
        Tasks = $"{Shop.Work("first", 2)}, {Shop.Work("then", 1, $$""", "links": [{ "task": "first", {{lag}} }]""")}",
        Log = log,
    }.Plan();

    private static Plan Filmed(string log) => new Shop
    {
        Machines = """{ "id": "printer", "name": "The printer", "kind": "printer", "mayRunAlone": true }""",
        Tasks = """
            {
              "id": "mast", "name": "mast", "milestone": "floats", "mayRunAlone": true, "filmingMinutes": 30,
              "stages": [
                { "kind": "run", "hours": 5, "needs": [["printer"]] },
                { "kind": "attended", "hours": 4 },
                { "kind": "attended", "hours": 1 }
              ]
            }
            """,
        Log = log,
    }.Plan();
}
