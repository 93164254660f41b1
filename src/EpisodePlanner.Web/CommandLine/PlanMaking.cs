using EpisodePlanner.Planning;
using EpisodePlanner.Web.Features.Plans;

namespace EpisodePlanner.Web.CommandLine;

/// <summary>Makes plans with their progress shown.</summary>
internal static class PlanMaking
{
    /// <summary>The plan alone.</summary>
    public static Plan Plan(OpenedWorkshop opened, Surroundings surroundings, CancellationToken stop)
    {
        var line = new ProgressLine(surroundings);
        var plan = Planner.Make(new PlanRequest(opened.Workshop, opened.Now), line.Of("planning"), stop);
        line.End();
        stop.ThrowIfCancellationRequested();
        return plan;
    }

    /// <summary>The plan and what follows from it.</summary>
    public static PlanAdvice Advice(OpenedWorkshop opened, Surroundings surroundings, CancellationToken stop)
    {
        var line = new ProgressLine(surroundings);
        var plan = Planner.Make(new PlanRequest(opened.Workshop, opened.Now), line.Of("planning"), stop);
        var advice = new PlanAdvice
        {
            Plan = plan,
            MovedWeeks = opened.MovedWeeks,
            Next = NextThing.Of(plan),
            Tonight = RunsTonight.Of(plan, line.Of("putting off what starts tonight"), stop),
            FilmFirst = Filming.First(plan),
            Outside = OutsideDates.Of(plan, true, stop),
            Moved = MovedStarts.Of(plan),
            Assumed = AssumptionRanking.Rank(plan, line.Of("trying other answers"), stop),
            Foreseen = Hindsight.Of(plan, stop),
        };
        line.End();
        stop.ThrowIfCancellationRequested();
        return advice;
    }
}
