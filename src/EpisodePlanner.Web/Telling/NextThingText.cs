using EpisodePlanner.Planning;
using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Web.Telling;

/// <summary>The one thing to do now, or next.</summary>
internal static class NextThingText
{
    public static void Write(ISheet page, Plan plan, NextThing? thing, PlanNames names, bool withCautions = true)
    {
        page.Heading("The one next thing");
        page.Paragraph(thing is null
            ? "Nothing: no work that needs hands is left, or none that has a date."
            : $"{When(plan, thing, names)}: {What(thing)}{Where(thing, names)}.{Rest(plan, thing, names)}");
        if (thing is not null && withCautions)
        {
            WriteCautions(page, plan, thing.Stage);
        }
    }

    /// <summary>That a run goes on with nobody there is told with what starts tonight.</summary>
    private static void WriteCautions(ISheet page, Plan plan, PlannedStage stage)
    {
        foreach (var caution in Cautions.For(stage, plan.Request.Workshop).Skip(stage.RunsAlone ? 1 : 0))
        {
            page.Item(CautionWords.Of(caution));
        }
    }

    private static string When(Plan plan, NextThing thing, PlanNames names)
    {
        var (part, now) = (thing.Part, plan.Request.PlannedAt);
        var first = part.Start <= now ? "Now" : names.Moment(part.Start);
        return part.End > part.Start ? $"{first}, {Words.Minutes(Length(part))}" : first;
    }

    private static string What(NextThing thing) => thing.Part.Kind switch
    {
        PartKind.Load => $"load and start {PlanNames.Quote(thing.Stage.Name)}",
        PartKind.Unload => $"unload {PlanNames.Quote(thing.Stage.Name)}",
        _ when thing.Stage.Begun => $"go on with {PlanNames.Quote(thing.Stage.Name)}",
        _ => PlanNames.Quote(thing.Stage.Name),
    };

    private static string Where(NextThing thing, PlanNames names)
    {
        var stations = names.Stations(thing.Part.Stations.Where(id => !names.IsPerson(id)));
        var people = names.Stations(thing.Part.Stations.Where(names.IsPerson));
        return (stations.Length > 0 ? $", at {stations}" : "") + (people.Length > 0 ? $", by {people}" : "");
    }

    private static string Rest(Plan plan, NextThing thing, PlanNames names)
    {
        if (thing.Part.Kind == PartKind.Load && thing.Stage.Parts.FirstOrDefault(p => p.Kind == PartKind.Run) is { } run)
        {
            return $" It then runs until {names.Moment(run.End)}.";
        }

        var left = thing.Stage.Minutes - Length(thing.Part);
        return thing.Part.Kind == PartKind.Work && left > 0
            ? $" {Words.Minutes(left)} of it stay for later; done {names.Moment(thing.Stage.Finish ?? plan.Horizon)}."
            : "";
    }

    private static int Length(PlannedPart part) => (int)(part.End - part.Start).TotalMinutes;
}
