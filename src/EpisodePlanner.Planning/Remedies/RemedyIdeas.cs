using EpisodePlanner.Scheduling;
using NodaTime;

namespace EpisodePlanner.Planning;

/// <summary>Finds what could be done about a silence. Only what is allowed: no machine is left alone that must not be.</summary>
internal static class RemedyIdeas
{
    private const int MostTasks = 5;

    /// <summary>The ideas for a silence of a series, or of the channel where the outlook has none.</summary>
    public static IReadOnlyList<RemedyIdea> Of(Plan plan, Outlook outlook, SilenceAhead alarm)
    {
        var episode = plan.Episodes.FirstOrDefault(one => alarm.Episode is not null && one.Id == alarm.Episode);
        var series = outlook.Series.IsEmpty ? plan.Series.Where(one => one.State == SeriesState.Active).Select(one => one.Series).ToList() : [outlook.Series];
        return
        [
            .. series.SelectMany(id => Cuts(plan, id, firstOnly: outlook.Series.IsEmpty)),
            .. series.SelectMany(id => Others(plan, id)),
            .. episode is null ? [] : Bench(plan, episode),
            .. alarm.Ends is { } ends ? PutOff(plan, outlook, ends) : [],
        ];
    }

    /// <summary>The series rests until the silence would end; null for the channel, or where nothing ends it.</summary>
    public static RemedyIdea? Rest(Plan plan, Outlook outlook, SilenceAhead alarm) =>
        alarm.Ends is { } day && plan.Request.Workshop.Series.Find(outlook.Series) is { State: SeriesState.Active } series
            ? new RemedyIdea(
                RemedyKind.Rest,
                $"{series.Name} rests openly until {Words.Day(day)}",
                new SeriesChange(series.Id, series with { State = SeriesState.Resting, RestingUntil = day }),
                [])
            : null;

    /// <summary>
    /// What the bench could do otherwise. That work takes less than it is estimated at is a wish and no way out; that a
    /// delivery is sent by express, or a stand-in used, is one.
    /// </summary>
    private static IEnumerable<RemedyIdea> Bench(Plan plan, PlannedEpisode episode) => WhatIfIdeas.Of(plan, episode)
        .Where(idea => idea.Kind != WhatIfKind.ShorterByADay || ShortensAWait(plan.Request.Workshop, idea.Change))
        .Select(idea => new RemedyIdea(RemedyKind.Bench, idea.Says, idea.Change, idea.Cautions))
        .Concat(HelperForADay.Of(plan, episode) is { } helper ? [helper] : []);

    private static bool ShortensAWait(Workshop workshop, Change change) =>
        change is TaskChange { To: { } to }
        && workshop.Tasks.Find(to.Id) is { } from
        && from.Stages.Zip(to.Stages).Any(pair => pair.First.Kind == StageKind.Wait && pair.First != pair.Second);

    private static IEnumerable<RemedyIdea> Cuts(Plan plan, Id series, bool firstOnly)
    {
        var cuts = CutPlaces.Changes(plan, series).Select(idea => new RemedyIdea(RemedyKind.Cut, idea.Says, idea.Change, []));
        return firstOnly ? cuts.Take(1) : cuts;
    }

    private static IEnumerable<RemedyIdea> Others(Plan plan, Id series) => OtherEpisodes.Changes(plan, series)
        .Select(idea => new RemedyIdea(RemedyKind.OtherEpisode, idea.Says, idea.Change, []));

    /// <summary>The work of each other series that begins before the silence ends, and work that leads to no milestone.</summary>
    private static IEnumerable<RemedyIdea> PutOff(Plan plan, Outlook outlook, LocalDate until)
    {
        var workshop = plan.Request.Workshop;
        var owners = PlanDraft.SeriesByTask(workshop);
        var early = plan.Stages
            .Where(stage => stage.Key.IsTask && !stage.Begun && stage.Start is { } start && start.InZone(plan.Zone).Date < until)
            .Select(stage => workshop.Tasks.Find(stage.Key.Task)!)
            .Distinct()
            .Where(task => task.NeededBy is null)
            .ToList();
        foreach (var group in early.Where(task => task.Milestone is not null).GroupBy(task => owners[task.Id].Id))
        {
            if (!outlook.Series.IsEmpty && group.Key != outlook.Series)
            {
                yield return new RemedyIdea(
                    RemedyKind.PutOff,
                    $"the work of {workshop.Series.Find(group.Key)!.Name} waits until {Words.Day(until)}",
                    new Batch(group.Select(task => (Change)Waits(task, until)).ToValueList()),
                    []);
            }
        }

        foreach (var task in early.Where(task => task.Milestone is null).Take(MostTasks))
        {
            yield return new RemedyIdea(RemedyKind.PutOff, $"\u201c{task.Name}\u201d waits until {Words.Day(until)}", Waits(task, until), []);
        }
    }

    private static TaskChange Waits(WorkTask task, LocalDate until) => new TaskChange(task.Id, task with { NotBefore = until });
}
