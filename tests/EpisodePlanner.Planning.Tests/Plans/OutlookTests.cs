using NodaTime;

namespace EpisodePlanner.Planning.Tests.Plans;

/// <summary>
/// Silences so far and to come, on Monday 8 March 2027. Uploads on 1 and 19 February and 5 March; 10 h of work are out on
/// Friday 12 March. Days counted by hand.
/// </summary>
public sealed class OutlookTests
{
    private static readonly LocalDate Today = new(2027, 3, 8);

    private const string Made = """
        { "series": "raft", "date": "2027-02-01" }, { "series": "raft", "date": "2027-02-19" }, { "series": "raft", "date": "2027-03-05" }
        """;

    [Fact]
    public void Past_EndsOpenToday()
    {
        Assert.Equal(
            [
                new Silence(new(2027, 2, 1), new(2027, 2, 19), 18),
                new Silence(new(2027, 2, 19), new(2027, 3, 5), 14),
                new Silence(new(2027, 3, 5), null, 3),
            ],
            Raft().Past);
    }

    [Fact]
    public void Forecast_GoesFromTheLastUploadToTheHorizon()
    {
        var plan = new Shop { Tasks = Shop.Work("weld", 10), Uploads = Made }.Plan();
        var last = plan.Horizon.InZone(plan.Zone).Date;
        var open = Period.DaysBetween(new LocalDate(2027, 3, 12), last);

        Assert.Equal(
            [new Silence(new(2027, 3, 5), new(2027, 3, 12), 7), new Silence(new(2027, 3, 12), null, open)],
            plan.Outlook("raft").Forecast);
    }

    [Fact]
    public void LastPlanned_IsTheLastEpisodes() => Assert.Equal(new LocalDate(2027, 3, 12), Raft().LastPlanned);

    [Fact]
    public void DueBy_CountsFromTheLastUpload()
    {
        // The assumed promise of 21 days from 5 March.
        Assert.Equal(new LocalDate(2027, 3, 26), Raft().DueBy);
        Assert.True(Raft().PromiseAssumed);
    }

    [Fact]
    public void Alarms_UploadOnTheLastDay_Keeps()
    {
        // 7 days from 5 to 12 March.
        Assert.Empty(Raft("\"promise\": { \"longestSilenceDays\": 7 }").Alarms);
    }

    [Fact]
    public void Alarms_UploadADayLater_IsOneDayOver()
    {
        var alarm = Assert.Single(Raft("\"promise\": { \"longestSilenceDays\": 6 }").Alarms);

        Assert.Equal(new SilenceAhead(new(2027, 3, 11), new(2027, 3, 12), 1, new Id("raft.rest")), alarm);
    }

    [Fact]
    public void Alarms_NothingPlanned_GoesOnToTheHorizon()
    {
        var plan = new Shop { Series = """{ "id": "raft", "name": "Raft" }""", Uploads = Made }.Plan();
        var outlook = plan.Outlook("raft");

        Assert.Null(outlook.LastPlanned);
        var alarm = Assert.Single(outlook.Alarms);
        Assert.Equal((new LocalDate(2027, 3, 26), null, null), (alarm.Due, alarm.Ends, alarm.Episode));
        Assert.Equal(Period.DaysBetween(new LocalDate(2027, 3, 26), plan.Horizon.InZone(plan.Zone).Date), alarm.DaysOver);
    }

    [Fact]
    public void Outlook_NothingIsOut_HasNoSilenceYet()
    {
        var outlook = Raft(uploads: "");

        Assert.Equal((null, null, null), (outlook.LastUpload, outlook.DaysSilent, outlook.DueBy));
        Assert.Empty(outlook.Past);
        Assert.Equal(new LocalDate(2027, 3, 12), Assert.Single(outlook.Forecast).From);
        Assert.Empty(outlook.Alarms);
    }

    [Fact]
    public void Outlook_UploadAfterNow_IsNotLookedAt()
    {
        var later = Made + """, { "series": "raft", "date": "2027-03-09" }""";

        Assert.Equal(new LocalDate(2027, 3, 5), Raft(uploads: later).LastUpload);
    }

    [Fact]
    public void Monthly_KeptSoFar_IsDueAtThisMonthsEnd()
    {
        // February, the first full month, has its upload; March's is the one of 5 March, so April's is next.
        Assert.Equal(new LocalDate(2027, 4, 30), Raft("\"promise\": { \"uploadsPerMonth\": 1 }").DueBy);
    }

    [Fact]
    public void Monthly_UploadAfterTheMonthsEnd_CountsTheDaysMissed()
    {
        // Out on 1 January and 5 February; 80 h end on Friday 2 April, out on 9 April: nine days after 31 March.
        var uploads = """{ "series": "raft", "date": "2027-01-01" }, { "series": "raft", "date": "2027-02-05" }""";
        var outlook = Raft("\"promise\": { \"uploadsPerMonth\": 1 }", uploads, 80);

        Assert.Equal(new LocalDate(2027, 3, 31), outlook.DueBy);
        Assert.Equal(new SilenceAhead(new(2027, 3, 31), new(2027, 4, 9), 9, new Id("raft.rest")), Assert.Single(outlook.Alarms));
    }

    [Fact]
    public void Resting_RaisesNoAlarmAndWorksAfterItsRest()
    {
        // Back on Tuesday 1 June: 10 h until Thursday 3 June, out on the 4th.
        var plan = Plan("\"state\": \"resting\", \"restingUntil\": \"2027-06-01\"", Made, 10);
        var outlook = plan.Outlook("raft");

        Assert.Null(outlook.DueBy);
        Assert.Empty(outlook.Alarms);
        Assert.Equal(("2027-06-01T18:00", "2027-06-04T18:00"), (plan.Start("weld"), plan.Publish("raft.rest")));
    }

    [Fact]
    public void Finished_LeavesSeriesAndItsWorkOut()
    {
        var plan = Plan("\"state\": \"finished\"", Made, 10);

        Assert.Empty(plan.Series);
        Assert.Empty(plan.Stages);
        Assert.Empty(plan.Episodes);
        Assert.Equal(Period.DaysBetween(new LocalDate(2027, 3, 5), Today), plan.Channel.DaysSilent);
    }

    private static Outlook Raft(string more = "", string uploads = Made, int hours = 10) => Plan(more, uploads, hours).Outlook("raft");

    private static Plan Plan(string more, string uploads, int hours) => new Shop
    {
        Series = $$"""
            { "id": "raft", "name": "Raft", "milestones": [{ "id": "floats", "name": "it floats" }]{{(more.Length > 0 ? ", " : "")}}{{more}} }
            """,
        Tasks = Shop.Work("weld", hours),
        Uploads = uploads,
    }.Plan();
}
