using NodaTime;

namespace EpisodePlanner.Planning.Tests;

public sealed class DaylightTests
{
    private static readonly Duration Tolerance = Duration.FromMinutes(3);

    /// <summary>
    /// [P] Astronomy Answers (aa.quae.nl), "The Position of the Sun: Tables", table 1, row 01-01 of 2002: sunrise by
    /// latitude in local time, which at longitude 0 is UTC.
    /// </summary>
    [Theory]
    [InlineData(-60, "2002-01-01T02:43:00Z")]
    [InlineData(-50, "2002-01-01T03:55:00Z")]
    [InlineData(-40, "2002-01-01T04:35:00Z")]
    [InlineData(-20, "2002-01-01T05:24:00Z")]
    [InlineData(0, "2002-01-01T06:00:00Z")]
    [InlineData(20, "2002-01-01T06:35:00Z")]
    [InlineData(40, "2002-01-01T07:22:00Z")]
    [InlineData(50, "2002-01-01T07:59:00Z")]
    public void On_PublishedTableOfSunrise_Agrees(double latitude, string expected) =>
        AssertNear(expected, Daylight.On(Text.Day("2002-01-01"), latitude, 0).Sunrise);

    /// <summary>[P] The same row prints no sunrise from 68° to 88° south: the sun stays up.</summary>
    [Theory]
    [InlineData(-68)]
    [InlineData(-88)]
    public void On_PublishedMidnightSun_IsAlwaysUp(double latitude) =>
        Assert.Equal(new SunDay(null, null, true), Daylight.On(Text.Day("2002-01-01"), latitude, 0));

    /// <summary>
    /// [P] The worked example of Reda and Andreas, NREL/TP-560-34302 (Golden, Colorado, 17 October 2003), as quoted in
    /// the tests of a public implementation: sunrise 13:12:43 UT, sunset 00:20:19 UT.
    /// </summary>
    [Fact]
    public void On_WorkedExampleOfGolden_Agrees()
    {
        var sun = Daylight.On(Text.Day("2003-10-17"), 39.742476, -105.1786);

        AssertNear("2003-10-17T13:12:43Z", sun.Sunrise);
        AssertNear("2003-10-18T00:20:19Z", sun.Sunset);
    }

    /// <summary>
    /// [P] "diamond geezer", "Nearer 5pm", 4 November 2018: the sun set in London at 4.31pm on the 3rd and at 4.29pm on
    /// the 4th.
    /// </summary>
    [Theory]
    [InlineData("2018-11-03", "2018-11-03T16:31:00Z")]
    [InlineData("2018-11-04", "2018-11-04T16:29:00Z")]
    public void On_PublishedSunsetsOfLondon_Agree(string date, string expected) =>
        AssertNear(expected, Daylight.On(Text.Day(date), 51.5, -0.12).Sunset);

    /// <summary>[P] stjerneskinn.com, length of the day in London, 2024: 1 January 7:55, 1 February 9:09.</summary>
    [Theory]
    [InlineData("2024-01-01", 475)]
    [InlineData("2024-02-01", 549)]
    public void On_PublishedDayLengthsOfLondon_Agree(string date, double minutes)
    {
        var sun = Daylight.On(Text.Day(date), 51.5, -0.12);

        Assert.Equal(minutes, (sun.Sunset!.Value - sun.Sunrise!.Value).TotalMinutes, 3.0);
    }

    [Fact]
    public void On_PolarNight_HasNoSun() =>
        Assert.Equal(new SunDay(null, null, false), Daylight.On(Text.Day("2027-12-21"), 78.2, 15.6));

    [Fact]
    public void Calendar_MidnightSun_IsAlwaysOpen()
    {
        var axis = Text.Axis("2027-06-10T12:00:00Z", "Arctic/Longyearbyen", 20);

        Assert.Equal(1, Daylight.Calendar(78.2, 15.6, axis).Count);
        Assert.Equal(axis.Horizon, Daylight.Calendar(78.2, 15.6, axis).TotalWork);
    }

    [Fact]
    public void Calendar_PolarNight_IsNeverOpen() =>
        Assert.Empty(Daylight.Calendar(78.2, 15.6, Text.Axis("2027-12-10T12:00:00Z", "Arctic/Longyearbyen", 9)).Spans());

    [Theory]
    [InlineData("Europe/Dublin", 53.35, -6.26)]
    [InlineData("Pacific/Tongatapu", -21.1, -175.2)]
    [InlineData("Pacific/Auckland", -36.8, 174.8)]
    public void Calendar_FarFromGreenwich_HoldsNoonsAndNoMidnight(string zone, double latitude, double longitude)
    {
        var axis = Text.Axis("2027-06-10T12:00:00Z", zone, 10);
        var light = Daylight.Calendar(latitude, longitude, axis);

        for (var day = 2; day < axis.Days.Count - 1; day++)
        {
            Assert.True(light.IsOpen(axis.Days.MinuteOf(day, LocalTime.Noon)));
            Assert.False(light.IsOpen(axis.Days.StartOf(day)));
        }
    }

    [Fact]
    public void Calendar_PlanBegunAtNight_OpensAtSunriseAndClosesAtSunset()
    {
        var axis = Text.Axis("2003-10-17T06:00:00Z", "America/Denver", 1);
        var sun = Daylight.On(Text.Day("2003-10-17"), 39.742476, -105.1786);

        var span = Assert.Single(Daylight.Calendar(39.742476, -105.1786, axis).Spans());

        Assert.Equal(axis.MinuteOf(sun.Sunrise!.Value), span.Start);
        Assert.Equal(axis.MinuteOf(sun.Sunset!.Value), span.End);
    }

    private static void AssertNear(string expected, Instant? actual)
    {
        Assert.NotNull(actual);
        var off = actual.Value - Text.Moment(expected);
        Assert.True(off <= Tolerance && -off <= Tolerance, $"{actual} is {off.TotalMinutes:F1} minutes off.");
    }
}
