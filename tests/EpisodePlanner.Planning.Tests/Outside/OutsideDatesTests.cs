using EpisodePlanner.Planning.Tests.Plans;
using NodaTime;

namespace EpisodePlanner.Planning.Tests.Outside;

/// <summary>Bookings, approvals, fit days and dates that others set. Dates worked out by hand; chances by brute force.</summary>
public sealed class OutsideDatesTests
{
    private const string Track = """{ "id": "track", "name": "The track", "kind": "rented", "byBookingOnly": true }""";

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    // A ride of 2 h on the track, booked on Monday 15 March, 18:00 to 21:00; Friday 19 March is the next slot.
    private static Shop Ride(string booking, int hours = 2) => new()
    {
        Places = Track,
        Tasks = $$"""{ "id": "ride", "name": "ride", "milestone": "floats", "stages": [{ "kind": "attended", "hours": {{hours}}, "needs": [["track"]] }] }""",
        More = $$""", "bookings": [{ "id": "b", "place": "track", "from": "2027-03-15T18:00", "to": "2027-03-15T21:00"{{booking}} }]""",
    };

    [Fact]
    public void Bookings_Missed_CostUntilTheNextWindow()
    {
        var plan = Ride(", \"cancelBy\": \"2027-03-12\", \"cost\": 90, \"nextWindow\": \"2027-03-29T18:00\"").Plan();

        var ahead = Assert.Single(OutsideDates.Of(plan, true, Stop).Bookings);

        Assert.Equal("ride", Assert.Single(ahead.Work).Name);
        Assert.Equal(4, ahead.DaysToCancel);
        var move = Assert.Single(ahead.Missed!);
        Assert.Equal((new LocalDate(2027, 3, 19), new LocalDate(2027, 4, 2)), (move.From, move.To));
    }

    [Fact]
    public void Bookings_MissedWithoutANextWindow_LeaveTheUploadWithoutADate()
    {
        var ahead = Assert.Single(OutsideDates.Of(Ride("").Plan(), true, Stop).Bookings);

        Assert.Null(ahead.DaysToCancel);
        Assert.Null(Assert.Single(ahead.Missed!).To);
    }

    [Fact]
    public void Make_WorkLongerThanTheBooking_GoesOnInTheNextWindow()
    {
        var plan = Ride(", \"nextWindow\": \"2027-03-29T18:00\"", hours: 5).Plan();

        Assert.Equal(("2027-03-15T18:00", "2027-03-29T20:00"), (plan.Start("ride"), plan.Finish("ride")));
    }

    [Theory]
    [InlineData("", "book a day to come, or take the place off the work.")]
    [InlineData(", \"nextWindow\": \"2027-03-29T18:00\"", "its next window opens Monday 29 March; if that is booked, write it down as a booking.")]
    public void Findings_BookingInThePast_SayWhatWouldWork(string next, string helps)
    {
        var plan = Ride(next).Plan("2027-03-16T08:00");

        var finding = Assert.Single(plan.Findings, finding => finding.Where == "$.bookings['b']");
        Assert.Equal($"The booking of The track on Monday 15 March has passed, and “ride” is still to be done there: {helps}", finding.Says);
        Assert.Empty(OutsideDates.Of(plan, false, Stop).Bookings);
    }

    [Fact]
    public void Rounds_AnotherOne_IsPlanned()
    {
        // Five business days from Tuesday 20:00 end Tuesday week; ten end a week later: the slot after that.
        var plan = new Shop
        {
            Tasks = """
                { "id": "ask", "name": "ask the harbour master", "milestone": "floats", "stages": [
                  { "id": "write", "kind": "attended", "hours": 2 }, { "id": "answer", "kind": "wait", "hours": 0, "businessDays": 5, "failureChance": 0.3 }] }
                """,
        }.Plan();

        var round = Assert.Single(OutsideDates.Of(plan, true, Stop).Rounds);

        Assert.Equal((0.3m, 5), (round.Chance, round.BusinessDays));
        Assert.Equal(7, Assert.Single(round.Moves!).Days);
        Assert.Null(Assert.Single(OutsideDates.Of(plan, false, Stop).Rounds).Moves);
    }

    [Fact]
    public void FitDays_AreCountedByPlaceAndDay()
    {
        // 9 h outdoors in evenings of 4 h: three days.
        var plan = new Shop
        {
            Places = """{ "id": "yard", "name": "The yard", "kind": "outdoors", "fitDayChance": 0.6 }""",
            Tasks = """{ "id": "paint", "name": "paint", "milestone": "floats", "stages": [{ "kind": "attended", "hours": 9, "needs": [["yard"]] }] }""",
        }.Plan();

        var fit = Assert.Single(OutsideDates.Of(plan, false, Stop).FitDays);

        Assert.Equal(3, fit.Days.Count);
        Assert.Equal(0.216, fit.AllFit, 12);
        Assert.Equal(5, fit.MeanDays, 12);
    }

    [Theory]
    [InlineData(3)]
    [InlineData(5)]
    [InlineData(9)]
    public void EnoughOf_Days_IsTheShareOfAllWeathers(int open)
    {
        var fit = Three(0.7m);

        var chance = 0d;
        for (var weather = 0; weather < 1 << open; weather++)
        {
            var days = System.Numerics.BitOperations.PopCount((uint)weather);
            chance += days >= 3 ? Math.Pow(0.7, days) * Math.Pow(0.3, open - days) : 0;
        }

        Assert.Equal(chance, fit.EnoughOf(open), 12);
    }

    /// <summary>Source: the project's checks.md §7, sessions until three pass.</summary>
    [Theory]
    [InlineData(3, 0.125)]
    [InlineData(4, 0.3125)]
    [InlineData(5, 0.5)]
    [InlineData(6, 0.65625)]
    [InlineData(8, 0.8554688)]
    public void EnoughOf_EvenChance_IsTheCheckedValue(int open, double chance)
    {
        Assert.Equal(chance, Three(0.5m).EnoughOf(open), 7);
        Assert.Equal(6, Three(0.5m).MeanDays, 12);
    }

    private static FitDays Three(decimal chance) => new(
        new Place { Id = new Id("yard"), Name = "The yard", Kind = PlaceKind.Outdoors },
        chance,
        [new LocalDate(2027, 3, 8), new LocalDate(2027, 3, 9), new LocalDate(2027, 3, 10)]);

    [Theory]
    [InlineData("2027-03-12", 2)]
    [InlineData("2027-03-09", -1)]
    public void Needed_DatesFromOutside_HaveAMargin(string by, int margin)
    {
        // 10 h in evenings of 4 h: done on Wednesday 10 March.
        var plan = (new Shop { Tasks = Shop.Work("build", 10, $", \"neededBy\": \"{by}\"") }).Plan();

        Assert.Equal(margin, Assert.Single(OutsideDates.Of(plan, false, Stop).Needed).Margin);
    }
}
