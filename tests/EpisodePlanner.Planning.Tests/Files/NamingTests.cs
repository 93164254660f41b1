using EpisodePlanner.Planning.Files;

namespace EpisodePlanner.Planning.Tests.Files;

public sealed class NamingTests
{
    [Fact]
    public void Read_IdsLeftOut_AreMadeFromNamesKindsAndDates()
    {
        var workshop = Bytes.Whole("""
            { "format": 1, "name": "Shed", "zone": "Europe/Dublin",
              "people": [ { "name": "Seán Ó Súilleabháin" }, { "name": "漢字" } ],
              "places": [ { "name": "Maker's bench no. 2", "kind": "bench" } ],
              "series": [ { "name": "Walker", "milestones": [ { "name": "Wheels on!" } ] }, { "name": "Walker", "milestones": [ { "name": "wheels on" } ] } ],
              "episodes": [ { "title": "It stands", "series": "walker" } ],
              "slotRules": [ { "from": "2027-01-01", "at": "17:00", "rule": "FREQ=WEEKLY" } ],
              "uploads": [ { "series": "walker", "date": "2027-01-08", "title": "First" }, { "series": "walker", "date": "2027-01-08" } ],
              "tasks": [ { "name": "weld", "stages": [ { "hours": 1 }, { "id": "cool", "kind": "wait", "hours": 1 }, { "hours": 1 } ], "shots": [ { "name": "Arc" } ] } ],
              "log": [ { "at": "2027-01-02T20:00:00Z", "task": "weld", "outcome": "done" } ],
              "toldDates": [ { "episode": "it-stands", "date": "2027-03-26", "toldOn": "2027-03-01", "to": "all" } ],
              "timedLines": [ { "text": "Sale until Sunday", "from": "2027-03-20", "until": "2027-03-28" } ],
              "bookings": [ { "place": "makers-bench-no-2", "from": "2027-04-10T10:00", "to": "2027-04-10T14:00" } ] }
            """);

        Assert.Equal(["person", "sean-o-suilleabhain"], Ids(workshop.People));
        Assert.Equal(["makers-bench-no-2"], Ids(workshop.Places));
        Assert.Equal(["walker", "walker-2"], Ids(workshop.Series));
        Assert.Equal(["wheels-on", "wheels-on-2"], Ids(workshop.Series.SelectMany(series => series.Milestones)));
        Assert.Equal(["it-stands"], Ids(workshop.Episodes));
        Assert.Equal(["slot-2027-01-01"], Ids(workshop.SlotRules));
        Assert.Equal(["upload-2027-01-08", "upload-2027-01-08-2"], Ids(workshop.Uploads));
        Assert.Equal(["1", "cool", "3"], Ids(workshop.Tasks.Single().Stages));
        Assert.Equal(["arc"], Ids(workshop.Tasks.Single().Shots));
        Assert.Equal(["log-2027-01-02"], Ids(workshop.Log));
        Assert.Equal(["told-2027-03-01"], Ids(workshop.ToldDates));
        Assert.Equal(["sale-until-sunday"], Ids(workshop.TimedLines));
        Assert.Equal(["booking-2027-04-10"], Ids(workshop.Bookings));
    }

    [Fact]
    public void Read_IdsLeftOut_DontDependOnTheOrderOfTheArray()
    {
        string[] tasks =
        [
            """{ "name": "cut", "stages": [ { "hours": 1 } ] }""", """{ "name": "cut", "stages": [ { "hours": 2 } ] }""",
            """{ "name": "Cut", "stages": [ { "hours": 1 } ] }""", """{ "id": "cut-2", "name": "weld", "stages": [ { "hours": 2 } ] }""",
        ];
        var expected = Written(tasks);
        var random = new Random(3);

        for (var i = 0; i < 20; i++)
        {
            random.Shuffle(tasks);
            Assert.Equal(expected, Written(tasks));
        }
    }

    [Fact]
    public void Read_WrittenIds_AreKept()
    {
        var workshop = Bytes.Whole("""
            { "format": 1, "name": "Shed", "zone": "Europe/Dublin", "people": [ { "id": "x", "name": "Ann" }, { "name": "x" } ] }
            """);

        Assert.Equal(["x", "x-2"], Ids(workshop.People));
    }

    private static byte[] Written(string[] tasks) => WorkshopFile.Write(Bytes.Whole(
        $$"""{ "format": 1, "name": "Shed", "zone": "Europe/Dublin", "tasks": [{{string.Join(",", tasks)}}] }"""));

    private static IEnumerable<string> Ids(IEnumerable<IThing> things) => things.Select(thing => thing.Id.ToString());
}
