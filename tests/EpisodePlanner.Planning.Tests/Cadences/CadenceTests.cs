using EpisodePlanner.Planning.Tests.Plans;
using NodaTime;

namespace EpisodePlanner.Planning.Tests.Cadences;

/// <summary>What can be kept up. Expected hours are counted by hand: 20 h a week are free, tails have no length.</summary>
public sealed class CadenceTests
{
    private const string Cat = """{ "id": "cat", "name": "Catamaran", "promise": { "longestSilenceDays": 14 }, "milestones": [{ "id": "sails", "name": "it sails" }] }""";

    private static readonly Shop Two = new()
    {
        Series = $$"""{ "id": "raft", "name": "Raft", "promise": { "longestSilenceDays": 14 }, "milestones": [{ "id": "floats", "name": "it floats" }] }, {{Cat}}""",
        Tasks = $$"""{{Shop.Work("saw", 12)}}, { "id": "sew", "name": "sew", "milestone": "sails", "stages": [{ "kind": "attended", "hours": 24 }] }""",
        Uploads = """{ "series": "raft", "date": "2027-03-05" }, { "series": "cat", "date": "2027-02-26" }""",
    };

    [Fact]
    public void Of_NoLog_TakesFreeHours()
    {
        var cadence = Cadence.Of(Two.Plan());

        Assert.True(cadence.Kept.Assumed);
        Assert.Equal((20m, 20m, 17m), (cadence.Kept.HoursAWeek, cadence.Kept.OpenHoursAWeek, cadence.LoadedHours));
        // 17 h a week for 18 h an episode on average.
        Assert.Equal(17m / 18, cadence.UploadsAWeek);
    }

    [Fact]
    public void Of_TwoFortnightsOnFridays_TakeTurns()
    {
        var cadence = Cadence.Of(Two.Plan());

        // A promise of 14 days spans two weekly slots: one of any two is each one's own. 12 and 24 h in two weeks: 18 h a week.
        Assert.Equal([2, 2], cadence.Series.Select(series => series.Slots));
        Assert.Equal([12m, 6m], cadence.Series.Select(series => series.HoursAWeek));
        Assert.True(cadence.Together.SlotsSuffice);
        Assert.Equal(2, cadence.Together.Rotation.Distinct().Count());
        Assert.Equal((18m, false), (cadence.Together.HoursAWeek, cadence.Together.HandsSuffice));
        Assert.Null(cadence.Breaks);
    }

    [Fact]
    public void Of_FullLoading_HandsSuffice() => Assert.True(Cadence.Of(Two.Plan(), 1).Together.Hold);

    [Fact]
    public void Nearest_HandsTooFew_LengthensUntilTheyDo()
    {
        var cadence = Cadence.Of(Two.Plan());

        // One slot more for the catamaran, 21 days: 8 + 6 h a week, which is at most 17.
        Assert.Equal([(new Id("cat"), 21, 7), (new Id("raft"), 14, 0)], cadence.Nearest.Select(p => (p.Series, p.Days, p.More)));
    }

    [Fact]
    public void Resting_TellsWhatIsLeft() => Assert.Equal(
        [(new Id("cat"), 6m, true), (new Id("raft"), 12m, true)],
        Cadence.Of(Two.Plan()).Resting.Select(r => (r.Rests, r.Then.HoursAWeek, r.Then.Hold)));

    [Fact]
    public void Of_AThirdFortnight_BreaksFirstWhereEverySlotIsTaken()
    {
        // Three promises of two slots each on one slot a week: no order of turns. The catamaran, last out on 26 February, is due
        // on 12 March and gets that slot; the raft, out on 5 March, gets the 19th; the third, never out, was due by the 22nd.
        var three = Two with { Series = Two.Series + ", " + Cat.Replace("cat", "van", StringComparison.Ordinal).Replace("sails", "drives", StringComparison.Ordinal).Replace("Catamaran", "Van", StringComparison.Ordinal) };
        var cadence = Cadence.Of(three.Plan());

        Assert.True(cadence.Together.NoRotation);
        Assert.Empty(cadence.Together.Rotation);
        Assert.Equal(new FirstBroken(new Id("van"), new LocalDate(2027, 3, 22)), cadence.Breaks);
        Assert.NotEmpty(cadence.Nearest);
    }

    [Fact]
    public void Kept_ByTheLog_WithoutMachinesAndWithLostWeeks()
    {
        // Four weeks of log: 6 h and 4 h by hand, 30 h of printing, one week lost and one of 2 h: 12 h in 4 weeks.
        var logged = Two with
        {
            Machines = """{ "id": "tall", "name": "Tall", "kind": "printer" }""",
            Tasks = Two.Tasks + """, { "id": "print", "name": "print", "kind": "print", "stages": [{ "kind": "run", "hours": 30, "needs": [["tall"]] }] }""",
            Log = """
                { "at": "2027-02-08T07:00:00Z", "task": "saw", "minutes": 360, "outcome": "partly" },
                { "at": "2027-02-10T20:00:00Z", "task": "sew", "minutes": 240, "outcome": "partly" },
                { "at": "2027-02-20T20:00:00Z", "task": "print", "minutes": 1800, "outcome": "partly" },
                { "at": "2027-03-03T20:00:00Z", "task": "sew", "minutes": 120, "outcome": "partly" }
                """,
        };
        var kept = KeptHours.Of(logged.Plan());

        Assert.Equal(4, kept.Weeks);
        Assert.False(kept.Assumed);
        // The first entry is four weeks and an hour old: its week is not whole, so it does not count.
        Assert.Equal(6m / 4, kept.HoursAWeek);
        Assert.Equal(6m / 4 / 20, kept.Share);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(1.01)]
    public void Of_LoadingOutOfRange_Throws(double loading) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Cadence.Of(Two.Plan(), (decimal)loading));

    [Fact]
    public void Of_NoActiveSeries_AsksForNothing()
    {
        var cadence = Cadence.Of(new Shop { Series = "", Uploads = "", Tasks = """{ "id": "oil", "name": "oil", "stages": [{ "hours": 1 }] }""" }.Plan());

        Assert.True(cadence.Together.Hold);
        Assert.Null(cadence.UploadsAWeek);
        Assert.Empty(cadence.Nearest);
    }
}
