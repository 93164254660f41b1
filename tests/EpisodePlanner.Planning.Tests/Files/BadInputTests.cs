using EpisodePlanner.Planning.Files;

namespace EpisodePlanner.Planning.Tests.Files;

public sealed class BadInputTests
{
    [Theory]
    [InlineData("\"name\": \"Ben\"", "\"nmae\": \"Ben\", \"name\": \"Ben\"", "$.people[0].nmae", "There is no member 'nmae' here; did you mean 'name'?")]
    [InlineData("\"name\": \"Ben\"", "\"name\": \"Ben\", \"colour\": 1", "$.people[0].colour", "There is no member 'colour' here; here can stand: id, name, hours.")]
    [InlineData("\"name\": \"Ben\"", "\"name\": \"Ben\", \"odd name\": 1", "$.people[0]['odd name']", "There is no member 'odd name' here")]
    [InlineData("\"name\": \"Ben\"", "\"name\": \"Ben\", \"name\": \"Ben\"", "$.people[0].name", "The member 'name' is written twice; keep one of them.")]
    [InlineData("\"name\": \"Ben\"", "\"name\": \"Ben\", \"hours\": null", "$.people[0].hours", "null can't stand here; leave the member out")]
    [InlineData("\"name\": \"Ben\"", "\"name\": 5", "$.people[0].name", "This is a number; a text in double quotes would be right.")]
    [InlineData("\"name\": \"Ben\"", "\"name\": \"\"", "$.people[0].name", "This text is empty")]
    [InlineData("\"name\": \"Ben\"", "\"name\": \"B\\u0007n\"", "$.people[0].name", "Character 2 of this text is the control character U+0007; it must be one line without tabs.")]
    [InlineData("\"name\": \"Ben\"", "\"name\": \"B\\nn\"", "$.people[0].name", "the control character U+000A")]
    [InlineData("\"name\": \"Ben\"", "\"name\": \"\\ud83d\"", "$.people[0].name", "half of a \\u surrogate pair")]
    [InlineData("\"name\": \"Ben\"", "\"\\ud83d\": 1, \"name\": \"Ben\"", "$.people[0]['?']", "not proper Unicode text")]
    [InlineData("\"note\": \"rod ran out\"", "\"note\": \"rod\\u0000\"", "$.log[0].note", "only tabs and line feeds are possible.")]
    [InlineData("\"name\": \"Ben\"", "\"id2\": \"Ben\"", "$.people[0].name", "The member 'name' is missing; a text in double quotes must be there.", 1)]
    [InlineData("\"id\": \"ben\"", "\"id\": \"ben two\"", "$.people[0].id", "'ben two' can't be an id", 0, "perhaps 'ben-two'.")]
    [InlineData("\"id\": \"l2\"", "\"id\": \"l1\"", "$.log[1].id", "'l1' is already the id of element 0 of this array; ids must differ.")]
    [InlineData("\"id\": \"pull\"", "\"id\": \"first-layer\"", "$.tasks[0].shots[1].id", "'first-layer' is already the id of element 0")]
    [InlineData("\"hours\": 12,\n          \"needs\"", "\"hours\": -12, \"needs\"", "$.tasks[2].stages[0].hours", "-12 can't stand here; a number from 0 to 10,000 would be right.")]
    [InlineData("\"hours\": 12,\n          \"needs\"", "\"hours\": 10000.01, \"needs\"", "$.tasks[2].stages[0].hours", "10000.01 can't stand here")]
    [InlineData("\"hours\": 12,\n          \"needs\"", "\"hours\": 1e400, \"needs\"", "$.tasks[2].stages[0].hours", "1e400 can't stand here")]
    [InlineData("\"hours\": 12,\n          \"needs\"", "\"hours\": \"12\", \"needs\"", "$.tasks[2].stages[0].hours", "This is a text; a number from 0 to 10,000 would be right.")]
    [InlineData("\"minutes\": 95", "\"minutes\": 95.5", "$.log[0].minutes", "95.5 can't stand here; a whole number from 0 to 600,000 would be right.")]
    [InlineData("\"kind\": \"weld\"", "\"kind\": \"Weld\"", "$.tasks[2].kind", "'Weld' is not one of other, design, print", 0, "did you mean 'weld'?")]
    [InlineData("\"kind\": \"weld\"", "\"kind\": \"wled\"", "$.tasks[2].kind", "did you mean 'weld'?")]
    [InlineData("\"kind\": \"weld\"", "\"kind\": 3", "$.tasks[2].kind", "This is a number; one of other, design, print")]
    [InlineData("\"monday\"", "\"none\"", "$.people[1].hours.weekly[0].days[0]", "'none' is not one of monday, tuesday")]
    [InlineData("[\"monday\", \"wednesday\"]", "[]", "$.people[1].hours.weekly[0].days", "This array is too short; it needs at least 1.")]
    [InlineData("[\"monday\", \"wednesday\"]", "\"monday\"", "$.people[1].hours.weekly[0].days", "This is a text; an array in [ ] would be right.")]
    [InlineData("\"mayRunAlone\": true", "\"mayRunAlone\": \"yes\"", "$.machines[1].mayRunAlone", "This is a text; true or false, without quotes would be right.")]
    [InlineData("\"from\": \"18:30\"", "\"from\": \"24:00\"", "$.people[1].hours.weekly[0].from", "'24:00' is not a time of day; write hours and minutes from \"00:00\" to \"23:59\"")]
    [InlineData("\"from\": \"18:30\"", "\"from\": \"6:30 pm\"", "$.people[1].hours.weekly[0].from", "'6:30 pm' is not a time of day")]
    [InlineData("\"on\": \"2027-03-17\"", "\"on\": \"2027-02-30\"", "$.people[1].hours.dated[0].on", "'2027-02-30' is not a date of the calendar; write year-month-day")]
    [InlineData("\"on\": \"2027-03-17\"", "\"on\": \"17.3.2027\"", "$.people[1].hours.dated[0].on", "'17.3.2027' is not a date")]
    [InlineData("\"2027-03-08T18:00\"", "\"2027-03-08 18:00\"", "$.people[1].hours.busy[0].from", "is not a local date and time; write \"2027-03-05T18:00\"")]
    [InlineData("\"2027-03-01T21:40:00Z\"", "\"2027-03-01T21:40:00\"", "$.log[0].at", "is not a moment; write \"2027-03-05T18:00:00Z\"")]
    [InlineData("\"people\": [", "\"people\": [ 7,", "$.people[0]", "This is a number; an object in { } would be right.")]
    [InlineData("\"format\": 1", "\"format\": 2", "$.format", "2 is a format that this planner does not know; 1 is the one that can be read.")]
    [InlineData("\"format\": 1", "\"format\": \"1\"", "$.format", "This is a text; a whole number from 1 to 1 would be right.")]
    [InlineData("\"format\": 1,", "", "$.format", "The member 'format' is missing")]
    public void Read_OneThingWrong_IsTold(string piece, string other, string where, string says, int at = 0, string ends = "")
    {
        var reasons = Bytes.Reasons(Samples.WholeWith(piece, other));

        Assert.Equal(where, reasons[at].Where);
        Assert.Contains(says, reasons[at].Says, StringComparison.Ordinal);
        Assert.EndsWith(ends, reasons[at].Says, StringComparison.Ordinal);
        Assert.Equal(at + 1, reasons.Count);
    }

    [Fact]
    public void Read_ATextTooLong_IsTold()
    {
        var reason = Assert.Single(Bytes.Reasons(Samples.WholeWith("\"Ben\"", $"\"{new string('x', 201)}\"")));

        Assert.Equal("This text has 201 characters; at most 200 are possible.", reason.Says);
    }

    [Fact]
    public void Read_SeveralThingsWrong_TellsAllAtOnce()
    {
        var reasons = Bytes.Reasons("""
            { "format": 1, "name": "Shed", "zone": 3,
              "people": [ { "name": "Ann", "hours": { "weekly": [ { "days": ["monday"], "from": "9", "to": "10:00" } ] } } ],
              "series": [ { "name": "Walker", "work": [ "weld frame, 12 h", "paint" ] } ],
              "tasks": [ { "nam": "x", "stages": [ { "hours": -1 }, { "hours": 1, "kind": "runn" } ] } ] }
            """);

        Assert.Equal(
            [
                "$.zone", "$.people[0].hours.weekly[0].from", "$.tasks[0].nam", "$.tasks[0].name", "$.tasks[0].stages[0].hours",
                "$.tasks[0].stages[1].kind", "$.series[0].work[1]",
            ],
            reasons.Select(reason => reason.Where));
    }

    [Fact]
    public void Read_ThousandsOfThingsWrong_TellsTwoHundredAndHowManyMore()
    {
        var people = string.Join(",", Enumerable.Repeat("{ \"name\": 1 }", 5_000));

        var reasons = Bytes.Reasons($$"""{ "format": 1, "name": "Shed", "zone": "Europe/Dublin", "people": [{{people}}] }""");

        Assert.Equal(201, reasons.Count);
        Assert.Equal(new Reason("$", "There are 4,800 more; mend these first."), reasons[^1]);
    }

    [Fact]
    public void Read_OneThing_TellsPathsFromItsRoot()
    {
        var read = WorkshopFile.Read<WorkTask>(Bytes.Of("""{ "id": "x", "name": "x", "stages": [ { "hours": -1 } ] }"""));

        Assert.Equal("$.stages[0].hours", Assert.Single(read.Reasons).Where);
    }
}
