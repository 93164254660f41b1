namespace EpisodePlanner.Planning.Tests.Plans;

/// <summary>Three prints on one of two printers. Acceptance answers: the project's scenario 12.</summary>
public sealed class TwoPrintersTests
{
    [Fact]
    public void Make_LongPrint_NeverOnThePrinterThatMayNotRunAlone()
    {
        Assert.Equal([new Id("x")], Plan().Stage("long").Parts[0].Stations);
    }

    [Fact]
    public void Make_ShortPrintsFirst_AllOffTheBedsByTuesday()
    {
        var plan = Plan();

        Assert.Equal(["2027-03-08T18:00", "2027-03-08T18:00"], [plan.Start("first"), plan.Start("second")]);
        Assert.NotEqual(plan.Stage("first").Parts[0].Stations, plan.Stage("second").Parts[0].Stations);
        Assert.Equal(("2027-03-08T21:00", "2027-03-09T18:00"), (plan.Start("long"), plan.Finish("long")));
    }

    private static Plan Plan() => Trial.Plan(
        $$"""
        {
          "format": 1, "name": "Two printers", "zone": "Etc/UTC", "settings": {{Trial.Typed(0)}},
          "people": [{ "id": "maker", "name": "Maker", "hours": { "weekly": [{ "days": {{Trial.EveryDay}}, "from": "18:00", "to": "22:00" }] } }],
          "machines": [
            { "id": "x", "name": "X", "kind": "printer", "mayRunAlone": true },
            { "id": "y", "name": "Y", "kind": "printer" }
          ],
          "tasks": [{{Print("first", 3)}}, {{Print("second", 3)}}, {{Print("long", 10)}}]
        }
        """,
        "2027-03-08T18:00");

    private static string Print(string id, int hours) => $$"""
        {
          "id": "{{id}}", "name": "{{id}}", "kind": "print", "mayRunAlone": true,
          "stages": [{ "kind": "run", "hours": {{hours}}, "needs": [["x", "y"]] }]
        }
        """;
}
