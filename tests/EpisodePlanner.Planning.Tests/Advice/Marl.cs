using System.Text;
using EpisodePlanner.Planning.Files;
using NodaTime;

namespace EpisodePlanner.Planning.Tests.Advice;

/// <summary>A water clock: a long print that may run alone, three days at the bench after it, and Friday in sight.</summary>
internal static class Marl
{
    public static readonly Instant MondayEvening = Instant.FromUtc(2027, 3, 8, 20, 0);

    private const string EveryDay = """["monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday"]""";

    public static Workshop Workshop { get; } = Read($$"""
        {
          "format": 1, "name": "Marl's shed", "zone": "Etc/UTC",
          "settings": { "rangeLow": 1, "rangeHigh": 1, "tail": [{ "kind": "checks", "hours": 1 }] },
          "people": [{ "id": "ann", "name": "Ann", "hours": { "weekly": [{ "days": {{EveryDay}}, "from": "08:00", "to": "20:30" }] } }],
          "machines": [{ "id": "printer", "name": "The printer", "kind": "printer", "mayRunAlone": true }],
          "places": [{ "id": "bench", "name": "The bench", "kind": "bench", "hours": { "weekly": [{ "days": {{EveryDay}}, "from": "10:00", "to": "18:00" }] } }],
          "series": [{ "id": "clock", "name": "Water Clock", "milestones": [{ "id": "ticks", "name": "it ticks" }] }],
          "tasks": [
            {
              "id": "drum", "name": "drum", "milestone": "ticks", "mayRunAlone": true,
              "stages": [
                { "name": "print", "kind": "run", "hours": 14, "needs": [["printer"]] },
                { "name": "fit", "kind": "attended", "hours": 23, "needs": [["bench"]] }
              ],
              "shots": [
                { "id": "bed", "name": "the empty bed", "moment": "before", "required": true },
                { "id": "layers", "name": "layers", "moment": "during", "onceOnly": true },
                { "id": "spare", "name": "the shelf", "moment": "during" },
                { "id": "teeth", "name": "the teeth", "moment": "after", "onceOnly": true, "required": true, "lostBy": "close" }
              ]
            },
            {
              "id": "close", "name": "close the case", "series": "clock",
              "stages": [{ "kind": "attended", "hours": 1 }], "links": [{ "task": "drum" }]
            }
          ],
          "slotRules": [{ "id": "fridays", "from": "2027-01-01", "at": "18:00", "rule": "FREQ=WEEKLY;BYDAY=FR" }],
          "uploads": [{ "id": "last", "series": "clock", "date": "2027-03-05" }]
        }
        """);

    public static Plan Plan(Workshop? workshop = null, Instant? now = null) =>
        Make(new PlanRequest(workshop ?? Workshop, now ?? MondayEvening));

    public static Plan Make(PlanRequest request) => Planner.Make(request, stop: TestContext.Current.CancellationToken);

    public static ValueList<RunTonight> Tonight(Plan plan) =>
        RunsTonight.Of(plan, stop: TestContext.Current.CancellationToken);

    public static Workshop Read(string file)
    {
        var read = WorkshopFile.Read(Encoding.UTF8.GetBytes(file));
        Assert.Empty(read.Reasons);
        return read.Thing!;
    }

    public static Workshop With(Change change) => Assert.IsType<Applied>(Changes.Apply(Workshop, change)).Workshop;

    public static WorkTask Drum => Workshop.Tasks.Find(new Id("drum"))!;
}
