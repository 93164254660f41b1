using System.Text;
using EpisodePlanner.Checking;
using EpisodePlanner.Planning.Files;
using EpisodePlanner.Scheduling.Causes;
using NodaTime;
using NodaTime.Text;

namespace EpisodePlanner.Planning.Tests.Plans;

/// <summary>Reads a workshop, plans it, and holds the plan against the independent checker.</summary>
internal static class Trial
{
    public const string EveryDay = """["monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday"]""";

    public const string Weekdays = """["monday", "tuesday", "wednesday", "thursday", "friday"]""";

    /// <summary>Settings under which the planning value is the typed value, with a tail of the given hours.</summary>
    public static string Typed(int tailHours) =>
        $$"""{ "rangeLow": 1, "rangeHigh": 1, "tail": [{ "kind": "everything", "hours": {{tailHours}} }] }""";

    public static Workshop Read(string file)
    {
        var read = WorkshopFile.Read(Encoding.UTF8.GetBytes(file));
        Assert.Empty(read.Reasons);
        return read.Thing!;
    }

    /// <summary>The plan of a workshop file at a local time of its zone: "2027-03-08T08:00".</summary>
    public static Plan Plan(string file, string now) => Plan(Read(file), now);

    public static Plan Plan(Workshop workshop, string now)
    {
        var local = LocalDateTimePattern.ExtendedIso.Parse(now.Length == 16 ? now + ":00" : now).Value;
        return Plan(new PlanRequest(workshop, local.InZoneStrictly(DateTimeZoneProviders.Tzdb[workshop.Zone]).ToInstant()));
    }

    /// <summary>A plan of a small workshop: its schedule is feasible and every cause holds.</summary>
    public static Plan Plan(PlanRequest request)
    {
        var plan = Feasible(request);
        var finder = new CauseFinder(plan.Schedule);
        Assert.All(
            plan.Schedule.Order, stage => Assert.Null(CauseChecker.Check(plan.Schedule, stage, finder.Explain(stage))));
        return plan;
    }

    /// <summary>A plan whose schedule is feasible; its causes are not looked at.</summary>
    public static Plan Feasible(PlanRequest request)
    {
        var plan = Planner.Make(request, stop: TestContext.Current.CancellationToken);
        Assert.Empty(ScheduleChecker.Check(plan.Schedule));
        return plan;
    }
}
