using EpisodePlanner.Scheduling;
using EpisodePlanner.Scheduling.Networks;
using NodaTime;

namespace EpisodePlanner.Planning;

/// <summary>Makes plans: the one way from a workshop to dates.</summary>
public static class Planner
{
    private const int Day = 1440;
    private const int LongestHorizon = 10 * 366 * Day;

    /// <summary>Makes the plan of a sound workshop (<see cref="WorkshopRules"/>).</summary>
    /// <param name="request">What the plan depends on.</param>
    /// <param name="progress">Told the share done, 0 to 1.</param>
    /// <param name="stop">Ends the search for something better; what is there by then is the plan.</param>
    public static Plan Make(PlanRequest request, IProgress<double>? progress = null, CancellationToken stop = default) =>
        Draft(request, progress, stop).Plan;

    /// <summary>The same with what it was made from.</summary>
    internal static DraftedPlan Draft(PlanRequest request, IProgress<double>? progress = null, CancellationToken stop = default)
    {
        var zone = DateTimeZoneProviders.Tzdb[request.Workshop.Zone];
        var whole = request with { PlannedAt = FloorToMinute(request.PlannedAt) };
        for (var horizon = FirstHorizon(whole); ; horizon = Math.Min(horizon * 2, LongestHorizon))
        {
            var draft = PlanDraft.Make(whole, zone, horizon);
            var network = WorkshopNetwork.Of(draft.Problem);
            var found = Search(draft, network, progress, stop);
            if (horizon == LongestHorizon || IsLongEnough(draft, found.Result.Schedule, network))
            {
                var plan = new PlanAssembly(draft, network, found.Result, found.Sweep, found.Accepted).Build();
                return new DraftedPlan(plan, draft, found.Sweep);
            }
        }
    }

    private static Instant FloorToMinute(Instant moment) =>
        Instant.FromUnixTimeSeconds(moment.ToUnixTimeSeconds() - Modulo(moment.ToUnixTimeSeconds(), 60));

    private static long Modulo(long value, long by) => ((value % by) + by) % by;

    /// <summary>
    /// About half again as long as the hands need, and half a year more so that silences and slots after the last work
    /// are seen.
    /// </summary>
    private static int FirstHorizon(PlanRequest request)
    {
        var work = request.Workshop.Tasks.SelectMany(t => t.Stages).Where(s => s.Kind == StageKind.Attended).Sum(s => s.Hours) * 60;
        var tails = request.Workshop.Episodes.Sum(e => Tails.Of(request.Workshop, e).Sum(p => p.Hours)) * 60;
        var axis = new TimeAxis(request.PlannedAt, DateTimeZone.Utc, 28 * Day);
        var weekly = Math.Max(60, new StationTable(request.Workshop, axis).Presence.TotalWork / 4);
        var weeks = Math.Min(520, (double)(work + tails) * 1.5 / weekly);
        return Math.Min(LongestHorizon, (26 + (int)Math.Ceiling(weeks)) * 7 * Day);
    }

    /// <summary>Whether all that can be done at all has its time, and every episode that gets ready found its slot.</summary>
    private static bool IsLongEnough(PlanDraft draft, BenchSchedule schedule, WorkshopNetwork network)
    {
        var unplaced = Enumerable.Range(0, draft.Problem.Stages.Count)
            .Any(stage => !schedule.IsPlaced(stage) && network.EarlyStart[stage] >= 0);
        var lastWork = draft.Axis.Horizon - (13 * 7 * Day);
        return !unplaced && (schedule.End <= lastWork || draft.Axis.Horizon == LongestHorizon);
    }

    private static (SearchResult Result, SlotSweep Sweep, AcceptedOrder Accepted) Search(
        PlanDraft draft, WorkshopNetwork network, IProgress<double>? progress, CancellationToken stop)
    {
        var accepted = AcceptedOrder.Of(draft);
        var sweep = NewSweep(draft);
        var objective = new PlanObjective(draft.Episodes, sweep, Input(draft, accepted));
        var budget = new SearchBudget(Math.Max(1, draft.Request.Schedules), draft.Request.Seed);
        var result = BenchSearch.Run(network, objective, budget, accepted.Stages, progress, stop);
        return (result, NewSweep(draft), accepted);
    }

    internal static SlotSweep NewSweep(PlanDraft draft) => new(
        draft.Episodes,
        draft.Slots,
        draft.Workshop.Settings.DaysBetweenUploads ?? 0,
        PlanQuestions.LastUploadDay(draft),
        minute => SilencePenalty.DayNumber(draft.Axis.DateOf(minute)));

    internal static LocalDate? LastChannelUpload(PlanDraft draft)
    {
        var today = draft.Axis.DateOf(0);
        return UploadDays.OfChannel(draft.Workshop).Where(day => day <= today).Select(day => (LocalDate?)day).LastOrDefault();
    }

    internal static ObjectiveInput Input(PlanDraft draft, AcceptedOrder accepted) => new()
    {
        Horizon = draft.Axis.Horizon,
        LastDay = draft.Axis.DateOf(draft.Axis.Horizon),
        NeededBy = [.. DueDates.NeededBy(draft)],
        AcceptedStarts = accepted.StartsWithinAWeek,
        ChannelSilentFrom = SilencePenalty.DayNumber(LastChannelUpload(draft) ?? draft.Axis.DateOf(0)),
        ChannelPromise = draft.Workshop.Settings.ChannelPromiseDays ?? Defaults.ChannelPromiseDays,
        WindowEnds = draft.Slots.GroupBy(w => Math.Max(0, w.Opening)).ToDictionary(g => g.Key, g => g.Max(w => w.End)),
    };
}

/// <summary>A plan with what it was made from.</summary>
/// <param name="Plan">The plan.</param>
/// <param name="Draft">The bench problem, the episodes and the slots behind it.</param>
/// <param name="Sweep">The windows that the plan's episodes have.</param>
internal sealed record DraftedPlan(Plan Plan, PlanDraft Draft, SlotSweep Sweep)
{
    /// <summary>A plan that is there, with what it was made from, without searching again.</summary>
    public static DraftedPlan Of(Plan plan)
    {
        var draft = PlanDraft.Make(plan.Request, plan.Zone, plan.Schedule.Problem.Horizon);
        var sweep = Planner.NewSweep(draft);
        sweep.Run(plan.Schedule.Finishes());
        return new DraftedPlan(plan, draft, sweep);
    }
}
