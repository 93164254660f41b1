namespace EpisodePlanner.Planning.Tests.Files;

/// <summary>The rules that span members are checked after reading; their places are positions in the file.</summary>
public sealed class SenseTests
{
    [Theory]
    [InlineData("\"links\": [\n        {\n          \"task\": \"feet\"", "\"links\": [ { \"task\": \"feets\"", "$.tasks[2].links[0].task", "'feet'")]
    [InlineData("[\"ben\", \"nuala\"]", "[\"ben\", \"nula\"]", "$.tasks[2].stages[0].needs[0][1]", "'nuala'")]
    [InlineData("[\"wheels-on\", \"frame\"]", "[\"frame\", \"wheels-on\"]", "$.episodes[0].milestones[1]", "comes before")]
    [InlineData("\"zone\": \"Europe/Dublin\"", "\"zone\": \"Europe/Dubln\"", "$.zone", "'Europe/Dublin'")]
    [InlineData("\"rule\": \"FREQ=WEEKLY;BYDAY=FR\"", "\"rule\": \"FREQ=YEARLY;BYMONTH=2;BYMONTHDAY=30\"", "$.slotRules[0].rule", "never comes")]
    [InlineData("\"lowHours\": 10,", "\"lowHours\": 12,", "$.tasks[0].stages[0].lowHours", "low, likely, high")]
    [InlineData("\"kind\": \"lathe\",", "\"kind\": \"lathe\", \"mayRunAlone\": true,", "$.machines[0].mayRunAlone", "never runs alone")]
    [InlineData("\"2027-03-17\", \"2027-12-25\"", "\"2727-03-17\", \"2027-12-25\"", "$.settings.daysToAvoid[0]", "2100")]
    public void Read_ABrokenRule_IsToldWithItsPlaceInTheFile(string piece, string other, string where, string says)
    {
        var reason = Assert.Single(Bytes.Reasons(Samples.WholeWith(piece, other)));

        Assert.Equal(where, reason.Where);
        Assert.Contains(says, reason.Says, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_ThingsInAnyOrder_AreNamedByTheirPositions()
    {
        var reasons = Bytes.Reasons("""
            { "format": 1, "name": "Shed", "zone": "Europe/Dublin",
              "tasks": [
                { "name": "zinc", "stages": [ { "hours": 1 } ], "links": [ { "task": "weld" }, { "task": "weld", "lagMinutes": 5 }, { "task": "cast" } ] },
                { "name": "weld", "stages": [ { "hours": 1 } ], "links": [ { "task": "zinc" } ] },
                { "name": "bend", "stages": [ { "hours": 1 }, { "hours": 1, "needs": [["nobody"]] } ] } ] }
            """);

        Assert.Equal(
            ["$.tasks[0].links[2].task", "$.tasks[1].links[0].task", "$.tasks[2].stages[1].needs[0][0]"],
            reasons.Select(reason => reason.Where).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Read_ACircleOfLines_IsToldAtALine()
    {
        var reason = Assert.Single(Bytes.Reasons("""
            { "format": 1, "name": "Shed", "zone": "Europe/Dublin",
              "series": [ { "name": "Arm" }, { "name": "Walker", "work": ["weld, 1 h, after paint", "cut, 1 h", "paint, 1 h"] } ] }
            """));

        Assert.StartsWith("$.series[1].work[", reason.Where, StringComparison.Ordinal);
        Assert.Contains("circle", reason.Says, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_WrongFormAndWrongSense_AreToldTogether()
    {
        var reasons = Bytes.Reasons("""
            { "format": 1, "name": "Shed", "zone": "Europe/Dubln", "peple": [],
              "log": [ { "at": "2027-01-01T00:00:00Z", "task": "nothing", "minutes": -1, "outcome": "done" } ],
              "tasks": [
                { "nam": "weld", "stages": [ { "hours": -3, "needs": [["nobody"]] } ], "links": [ { "task": "pant" } ] },
                { "id": "a", "name": "a", "stages": [ { "hours": 1 } ], "links": [ { "task": "b" } ] },
                { "id": "b", "name": "b", "stages": [ { "hours": 99999 } ], "links": [ { "task": "a" } ] },
                { "name": "paint", "stages": [ { "hours": 1 } ] } ] }
            """);

        Assert.Equal(
            [
                "$.peple", "$.tasks[0].nam", "$.tasks[0].name", "$.tasks[0].stages[0].hours", "$.tasks[2].stages[0].hours",
                "$.log[0].minutes", "$.zone", "$.tasks[0].stages[0].needs[0][0]", "$.tasks[0].links[0].task", "$.tasks[1].links[0].task",
                "$.log[0].task",
            ],
            reasons.Select(reason => reason.Where));
    }

    [Fact]
    public void Read_AWrongValue_BringsNoReasonsThatOnlyFollowFromIt()
    {
        var reason = Assert.Single(Bytes.Reasons("""
            { "format": 1, "name": "Shed", "zone": "Europe/Dublin",
              "tasks": [ { "name": "weld", "stages": [ { "lowHours": 5, "hours": "6 h", "highHours": 7 } ] } ] }
            """));

        Assert.Equal("$.tasks[0].stages[0].hours", reason.Where);
    }

    [Fact]
    public void Read_AnIdThatCantBeRead_BringsNoUnknownReferences()
    {
        var reason = Assert.Single(Bytes.Reasons("""
            { "format": 1, "name": "Shed", "zone": "Europe/Dublin",
              "tasks": [ { "id": "weld frame", "name": "x", "stages": [ { "hours": 1 } ] },
                { "name": "b", "stages": [ { "hours": 1 } ], "links": [ { "task": "weld-frame" } ] } ] }
            """));

        Assert.Equal("$.tasks[0].id", reason.Where);
    }
}
