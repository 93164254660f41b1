using EpisodePlanner.Scheduling;
using NodaTime;

namespace EpisodePlanner.Planning;

/// <summary>The suppositions that come up most: away for days, a run or test that fails, a delivery that is late, one more station, a series that rests or ends.</summary>
public static class Suppositions
{
    /// <summary>The most days that somebody can be supposed away, or a wait late.</summary>
    public const int MostDays = 365;

    /// <summary>The people of a workshop; the assumed maker where it names nobody.</summary>
    public static IEnumerable<Person> PeopleOf(Workshop workshop) => StationTable.PeopleOf(workshop);

    /// <summary>Nobody works with these hands for some days; machines that may run alone go on.</summary>
    /// <param name="workshop">The workshop.</param>
    /// <param name="person">The person; the assumed maker where the workshop names nobody.</param>
    /// <param name="from">The first day.</param>
    /// <param name="days">How many days, 1 to <see cref="MostDays"/>.</param>
    /// <returns>The supposition; null where there is no such person.</returns>
    public static Supposition? Away(Workshop workshop, Id person, LocalDate from, int days)
    {
        if (StationTable.PeopleOf(workshop).FirstOrDefault(one => one.Id == person) is not { } known)
        {
            return null;
        }

        var through = from.PlusDays(days - 1);
        var hours = known.Hours ?? Defaults.Evenings;
        var away = new DatedHours { Kind = DatedHoursKind.Closed, On = from, Through = days == 1 ? null : through, Note = "away, supposed" };
        var who = known.Name == Defaults.Maker.Name ? "you are" : $"{known.Name} is";
        return new Supposition(
            days == 1 ? $"{who} away on {Words.Day(from)}" : $"{who} away from {Words.Day(from)} to {Words.Day(through)}",
            new PersonChange(known.Id, known with { Hours = hours with { Dated = [.. hours.Dated, away] } }));
    }

    /// <summary>
    /// A stage fails: what goes on is logged as failed now; what is still to come must be done once more, found when its time
    /// is over.
    /// </summary>
    /// <param name="plan">The plan.</param>
    /// <param name="key">The stage of a task.</param>
    /// <returns>The supposition; null where the plan has no such stage of a task left to do.</returns>
    public static Supposition? Fails(Plan plan, StageKey key)
    {
        var workshop = plan.Request.Workshop;
        if (!key.IsTask || plan.Stages.FirstOrDefault(stage => stage.Key == key) is not { } planned)
        {
            return null;
        }

        var task = workshop.Tasks.Find(key.Task)!;
        var says = $"{PlannedAs(planned)} fails and must be done again";
        return planned.Begun
            ? new Supposition(says, ThingKinds.Log.Put(new LogEntry
            {
                Id = Free($"{task.Id}-supposed", workshop.Log.Contains),
                At = plan.Request.PlannedAt,
                Task = task.Id,
                Stage = key.Stage,
                Outcome = LogOutcome.Failed,
                Note = "supposed",
            }))
            : new Supposition(says, new TaskChange(task.Id, task with { Stages = Twice(task, key.Stage).ToValueList() }));
    }

    /// <summary>A wait, such as a delivery, takes longer.</summary>
    /// <param name="workshop">The workshop.</param>
    /// <param name="task">The task.</param>
    /// <param name="stage">Its stage, a wait.</param>
    /// <param name="days">Days on the clock, or business days where the wait is counted in them; 1 to <see cref="MostDays"/>.</param>
    /// <returns>The supposition; null where there is no such wait.</returns>
    public static Supposition? Late(Workshop workshop, Id task, Id stage, int days)
    {
        if (workshop.Tasks.Find(task) is not { } known
            || known.Stages.FirstOrDefault(one => one.Id == stage) is not { Kind: StageKind.Wait } wait)
        {
            return null;
        }

        var longer = wait.BusinessDays is { } business
            ? wait with { BusinessDays = business + days }
            : wait with
            {
                Hours = wait.Hours + (days * 24),
                LowHours = wait.LowHours + (days * 24),
                HighHours = wait.HighHours + (days * 24),
            };
        return new Supposition(
            $"\u201c{wait.Name ?? known.Name}\u201d takes {(wait.BusinessDays is null ? Words.Days(days) : days == 1 ? "1 business day" : $"{days} business days")} longer",
            new TaskChange(known.Id, known with { Stages = known.Stages.Select(one => one.Id == stage ? longer : one).ToValueList() }));
    }

    /// <summary>A second machine or place that may be used wherever the first may, or a second pair of hands.</summary>
    /// <returns>The supposition; null where there is no such station, or a place that is open by booking only.</returns>
    public static Supposition? OneMore(Workshop workshop, Id station) => MoreStations.Of(workshop, station) is { } idea
        ? new Supposition($"there is {idea.Says}", idea.Change)
        : null;

    /// <summary>A series rests openly until a day.</summary>
    /// <returns>The supposition; null where there is no such series, or it is finished.</returns>
    public static Supposition? Rests(Workshop workshop, Id series, LocalDate until) =>
        workshop.Series.Find(series) is { State: not SeriesState.Finished } known
            ? new Supposition(
                $"{known.Name} rests openly until {Words.Day(until)}",
                new SeriesChange(known.Id, known with { State = SeriesState.Resting, RestingUntil = until }))
            : null;

    /// <summary>A series is told to its end now: what is left of it is not planned any more.</summary>
    /// <returns>The supposition; null where there is no such series, or it is finished.</returns>
    public static Supposition? Finishes(Workshop workshop, Id series) =>
        workshop.Series.Find(series) is { State: not SeriesState.Finished } known
            ? new Supposition(
                $"{known.Name} is finished now",
                new SeriesChange(known.Id, known with { State = SeriesState.Finished, RestingUntil = null }))
            : null;

    private static string PlannedAs(PlannedStage planned) => $"\u201c{planned.Name}\u201d";

    private static IEnumerable<Stage> Twice(WorkTask task, Id stage)
    {
        foreach (var one in task.Stages)
        {
            yield return one;
            if (one.Id == stage)
            {
                yield return one with { Id = Free($"{stage}-again", id => task.Stages.Any(other => other.Id == id)), Name = $"{one.Name ?? task.Name}, again"[..Math.Min(200, (one.Name ?? task.Name).Length + 7)] };
            }
        }
    }

    private static Id Free(string stem, Func<Id, bool> isTaken)
    {
        var stump = stem[..Math.Min(stem.Length, Id.MaximumLength - 4)];
        return Enumerable.Range(1, int.MaxValue).Select(n => new Id(n == 1 ? stump : $"{stump}-{n}")).First(id => !isTaken(id));
    }
}
