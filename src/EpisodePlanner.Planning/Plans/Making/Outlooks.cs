using NodaTime;

namespace EpisodePlanner.Planning;

/// <summary>Holds uploads made and planned against the promises of the series and of the channel.</summary>
internal sealed class Outlooks(PlanDraft draft, ValueList<PlannedEpisode> episodes)
{
    private readonly LocalDate today = draft.Axis.DateOf(0);
    private readonly LocalDate last = draft.Axis.DateOf(draft.Axis.Horizon);

    public ValueList<Outlook> Series() => draft.Episodes.Series
        .Select(row => Of(row, [.. episodes.Where(e => e.Series == row.Series.Id && e.Date is not null)]))
        .ToValueList();

    public Outlook Channel()
    {
        var made = UploadDays.OfChannel(draft.Workshop).Where(day => day <= today).ToValueList();
        var days = draft.Workshop.Settings.ChannelPromiseDays;
        var promise = new Promise { LongestSilenceDays = days ?? Defaults.ChannelPromiseDays };
        return Build(default, "the channel", SeriesState.Active, promise, days is null, made, [.. episodes.Where(e => e.Date is not null)], null);
    }

    private Outlook Of(SeriesRow row, List<PlannedEpisode> planned) => Build(
        row.Series.Id,
        row.Series.Name,
        row.Series.State,
        row.Promise,
        row.PromiseAssumed,
        row.Uploads,
        planned,
        row.Series.State == SeriesState.Resting ? row.Series.RestingUntil : null);

    private Outlook Build(
        Id series,
        string name,
        SeriesState state,
        Promise promise,
        bool assumed,
        ValueList<LocalDate> made,
        List<PlannedEpisode> planned,
        LocalDate? restingUntil)
    {
        LocalDate? lastMade = made.Count > 0 ? made[^1] : null;
        var isResting = restingUntil is { } until && until > today;
        var days = planned.Select(e => e.Date!.Value).Order().ToList();
        return new Outlook
        {
            Series = series,
            Name = name,
            State = state,
            Promise = promise,
            PromiseAssumed = assumed,
            LastUpload = lastMade,
            DaysSilent = lastMade is { } day ? Period.DaysBetween(day, today) : null,
            DueBy = isResting ? null : PromiseKeeping.DueBy(made, promise),
            Past = Silences.Past(made, today),
            Forecast = Silences.Forecast(lastMade, days, last),
            Alarms = isResting ? [] : Alarms(promise, made, planned),
            LastPlanned = days.Count > 0 ? days[^1] : null,
        };
    }

    /// <summary>Overruns that go on now or lie ahead and that an upload ends, and the one that goes on with none planned.</summary>
    private ValueList<SilenceAhead> Alarms(Promise promise, ValueList<LocalDate> made, List<PlannedEpisode> planned)
    {
        var days = made.Concat(planned.Select(e => e.Date!.Value)).Distinct().Order().ToList();
        return PromiseKeeping.Overruns(days, promise, last)
            .Where(overrun => overrun.Kept is { } kept ? kept > today : planned.Count == 0)
            .Select(overrun => new SilenceAhead(overrun.Due, overrun.Kept, overrun.Days, Ending(planned, overrun.Kept)))
            .ToValueList();
    }

    private static Id? Ending(List<PlannedEpisode> planned, LocalDate? day) =>
        planned.FirstOrDefault(e => e.Date == day && day is not null)?.Id;
}
