using System.Text;
using EpisodePlanner.Planning.Files;

namespace EpisodePlanner.Planning.Tests.Files;

public sealed class WorkLineTests
{
    [Fact]
    public void Read_LinesOfWorkBecomeMilestonesAndTasks()
    {
        var workshop = Bytes.Whole("""
            { "format": 1, "name": "Shed", "zone": "Europe/Dublin",
              "machines": [ { "name": "Big printer", "kind": "printer" } ],
              "series": [ { "name": "Walker", "work": [ "weld frame, 12 h", "print feet, 90 min", "paint, 3.50 h, after weld frame" ] } ] }
            """);

        Assert.Equal(
            """
            {
              "format": 1,
              "name": "Shed",
              "zone": "Europe/Dublin",
              "machines": [
                {
                  "id": "big-printer",
                  "name": "Big printer",
                  "kind": "printer"
                }
              ],
              "series": [
                {
                  "id": "walker",
                  "name": "Walker",
                  "milestones": [
                    {
                      "id": "weld-frame",
                      "name": "weld frame"
                    },
                    {
                      "id": "print-feet",
                      "name": "print feet"
                    },
                    {
                      "id": "paint",
                      "name": "paint"
                    }
                  ]
                }
              ],
              "tasks": [
                {
                  "id": "paint",
                  "name": "paint",
                  "kind": "paint",
                  "milestone": "paint",
                  "stages": [
                    {
                      "id": "1",
                      "hours": 3.5
                    }
                  ],
                  "links": [
                    {
                      "task": "weld-frame"
                    }
                  ]
                },
                {
                  "id": "print-feet",
                  "name": "print feet",
                  "kind": "print",
                  "milestone": "print-feet",
                  "stages": [
                    {
                      "id": "1",
                      "kind": "run",
                      "hours": 1.5,
                      "needs": [
                        ["big-printer"]
                      ]
                    }
                  ],
                  "links": [
                    {
                      "task": "weld-frame",
                      "assumed": true
                    }
                  ]
                },
                {
                  "id": "weld-frame",
                  "name": "weld frame",
                  "kind": "weld",
                  "milestone": "weld-frame",
                  "stages": [
                    {
                      "id": "1",
                      "hours": 12
                    }
                  ]
                }
              ]
            }

            """,
            Encoding.UTF8.GetString(WorkshopFile.Write(workshop)));
    }

    [Theory]
    [InlineData("weld frame", "'weld frame' has no length; write it as \"weld frame, 12 h\"")]
    [InlineData("", "'' has no length")]
    [InlineData(",,,", "has no length")]
    [InlineData("weld frame, 2 d", "'2 d' is in days")]
    [InlineData("weld frame, 2 days", "'2 days' is in days")]
    [InlineData("weld frame, 1,5 h", "'1,5 h' has a decimal comma; write a dot")]
    [InlineData("weld frame, 0 h", "The length '0 h' is out of range")]
    [InlineData("weld frame, 10001 h", "The length '10001 h' is out of range")]
    [InlineData("weld frame, 99999999999999999999999999999999 h", "is out of range")]
    [InlineData("weld frame, -3 h", "has no length")]
    [InlineData(", 3 h", "The name of the work must have 1 to 200 characters")]
    [InlineData("3 h", "The name of the work must have 1 to 200 characters")]
    [InlineData("weld frame, 3 h, after", "Nothing follows 'after'")]
    [InlineData("weld frame, 3 h, after weld frame", "'after weld frame' names no other work of this series")]
    [InlineData("weld frame, 3 h, after cut tubs", "'after cut tubs' names no other work of this series; did you mean 'cut tubes'?")]
    [InlineData("weld frame, 3 h, after same", "'after same' can mean same, same-2; write the id")]
    public void Read_ALineThatIsNotUnderstoodIsTold(string line, string says)
    {
        var reason = Assert.Single(Bytes.Reasons($$"""
            { "format": 1, "name": "Shed", "zone": "Europe/Dublin", "series": [ { "name": "Arm" },
              { "name": "Walker", "work": [ "cut tubes, 1 h", "same, 1 h", "same, 1 h", "{{line}}" ] } ] }
            """));

        Assert.Equal("$.series[1].work[3]", reason.Where);
        Assert.Contains(says, reason.Says, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("1 h", 1)]
    [InlineData("1.25h", 1.25)]
    [InlineData("2 hours", 2)]
    [InlineData("2 hrs", 2)]
    [InlineData("1 Hour", 1)]
    [InlineData("30 min", 0.5)]
    [InlineData("15 minutes", 0.25)]
    [InlineData("90m", 1.5)]
    public void Read_UnitsOfALine(string length, double hours)
    {
        var workshop = Bytes.Whole($$"""
            { "format": 1, "name": "Shed", "zone": "Europe/Dublin", "series": [ { "name": "Walker", "work": ["one, two, {{length}}"] } ] }
            """);

        var task = Assert.Single(workshop.Tasks);
        Assert.Equal("one, two", task.Name);
        Assert.Equal((decimal)hours, task.Stages[0].Hours);
    }

    [Fact]
    public void Read_AfterNamesTasksOfTheSeriesAndLaterLines()
    {
        var workshop = Bytes.Whole("""
            { "format": 1, "name": "Shed", "zone": "Europe/Dublin",
              "tasks": [ { "id": "t7", "name": "buy steel", "series": "walker", "stages": [ { "hours": 1 } ] } ],
              "series": [ { "name": "Walker", "work": ["weld, 1 h, after t7, after cut", "cut, 1 h, after Buy Steel"] } ] }
            """);

        Assert.Equal(["cut", "t7"], workshop.Tasks.Find(new Id("weld"))!.Links.Select(link => link.Task.ToString()));
        Assert.Equal(["t7"], workshop.Tasks.Find(new Id("cut"))!.Links.Select(link => link.Task.ToString()));
    }

    [Theory]
    [InlineData("wire the legs", WorkKind.Wire)]
    [InlineData("Solder boards", WorkKind.Solder)]
    [InlineData("order motors", WorkKind.Order)]
    [InlineData("think", WorkKind.Other)]
    public void Read_TheFirstVerbTellsTheKind(string name, WorkKind kind)
    {
        var workshop = Bytes.Whole($$"""
            { "format": 1, "name": "Shed", "zone": "Europe/Dublin", "series": [ { "name": "Walker", "work": ["{{name}}, 1 h"] } ] }
            """);

        Assert.Equal(kind, Assert.Single(workshop.Tasks).Kind);
    }

    [Theory]
    [InlineData("")]
    [InlineData("""{ "name": "a", "kind": "printer" }, { "name": "b", "kind": "printer" }""")]
    public void Read_APrintStaysAttendedUnlessOnePrinterExists(string machines)
    {
        var workshop = Bytes.Whole($$"""
            { "format": 1, "name": "Shed", "zone": "Europe/Dublin", "machines": [{{machines}}],
              "series": [ { "name": "Walker", "work": ["print feet, 1 h"] } ] }
            """);

        Assert.Empty(Assert.Single(workshop.Tasks).Stages[0].Needs);
    }
}
