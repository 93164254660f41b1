using EpisodePlanner.Benchmarks.Measuring;
using EpisodePlanner.Checking;
using EpisodePlanner.Planning;
using EpisodePlanner.Planning.Files;
using EpisodePlanner.Scheduling;
using EpisodePlanner.Scheduling.Causes;
using EpisodePlanner.Scheduling.Networks;

namespace EpisodePlanner.Benchmarks.Scale;

/// <summary>Measures one generated workshop, step by step, and has every schedule checked outside the timing.</summary>
internal sealed class ScaleRun
{
    private const int SchedulesToTime = 12;

    private readonly PlanRequest request;
    private readonly byte[] file;

    private ScaleRun(int tasks, int seed)
    {
        file = WorkshopFile.Write(GeneratedWorkshop.Make(tasks, seed));
        var read = WorkshopFile.Read(file);
        request = read.IsRead
            ? new PlanRequest(read.Thing, GeneratedWorkshop.PlannedAt)
            : throw new InvalidOperationException($"The generated workshop is not sound: {string.Join(" ", read.Reasons)}");
    }

    /// <summary>The steps in the order of the table.</summary>
    public static IReadOnlyList<string> Steps { get; } =
    [
        "reading the file", "network without calendars", "workshop network", "one bench schedule", "whole plan",
        "causes of all stages", "plan with all causes and chains",
    ];

    /// <summary>What was measured, for people.</summary>
    public string Says { get; private set; } = "";

    /// <summary>What the engine does, for people.</summary>
    public IReadOnlyList<string> Engine { get; private set; } = [];

    /// <summary>The median of each step.</summary>
    public Dictionary<string, TimeSpan> Times { get; } = [];

    /// <summary>How many schedules were checked.</summary>
    public int Checked { get; private set; }

    /// <summary>What the checker has against them.</summary>
    public List<string> Broken { get; } = [];

    public static ScaleRun Measure(int tasks, int seed)
    {
        var run = new ScaleRun(tasks, seed);
        run.MeasureSteps();
        return run;
    }

    private void MeasureSteps()
    {
        Time("reading the file", () => WorkshopFile.Read(file));
        var plan = Time("whole plan", () => Planner.Make(request));
        Check(plan.Schedule);

        var problem = plan.Schedule.Problem;
        var stages = problem.Stages.Count;
        Time("network without calendars", new CalendarFree(problem).Pass);
        Time("workshop network", () => WorkshopNetwork.Of(problem));
        Time("causes of all stages", () => Causes(plan.Schedule));
        Time("plan with all causes and chains", InFull);
        TimeSchedules(problem);
        Engine = EngineRun.Measure(request, plan, Broken);

        var unplaced = Enumerable.Range(0, stages).Count(stage => !plan.Schedule.IsPlaced(stage));
        Says = $"{file.Length / 1e6:0.0} MB, {stages} stages, {problem.Links.Count} links, {plan.Episodes.Count} episodes, "
            + $"{plan.Generated} schedules, {unplaced} stages without a date, "
            + $"work of {plan.Schedule.End / 10_080.0:0} weeks, horizon {problem.Horizon / 10_080} weeks";
    }

    private T Time<T>(string step, Func<T> work)
    {
        var (median, result) = Stopwatching.Of(work);
        Times[step] = median;
        return result;
    }

    private static int Causes(BenchSchedule schedule)
    {
        var finder = new CauseFinder(schedule);
        return schedule.Order.Sum(stage => finder.Explain(stage).CoBlockers.Count);
    }

    /// <summary>A plan finds its causes and chains when they are asked for; this asks for all of them.</summary>
    private (int CoBlockers, int Steps) InFull()
    {
        var plan = Planner.Make(request);
        return (plan.Stages.Sum(stage => stage.Cause?.CoBlockers.Count ?? 0), plan.Episodes.Sum(episode => episode.Chain.Count));
    }

    private void TimeSchedules(BenchProblem problem)
    {
        var budget = new SearchBudget(SchedulesToTime);
        var times = new List<TimeSpan>();
        Stopwatching.Of(() =>
        {
            var clock = new OneScheduleObjective();
            BenchSearch.Run(problem, clock, budget);
            times.Add(Stopwatching.Median(clock.Times));
            return clock;
        });
        Times["one bench schedule"] = Stopwatching.Median(times);
        for (var better = 0; better < SchedulesToTime; better++)
        {
            Check(BenchSearch.Run(problem, new OneScheduleObjective(better), budget with { Schedules = better + 1 }).Schedule);
        }
    }

    private void Check(BenchSchedule schedule)
    {
        Checked++;
        Broken.AddRange(ScheduleChecker.Check(schedule));
    }
}
