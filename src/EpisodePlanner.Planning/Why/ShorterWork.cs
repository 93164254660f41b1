using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Planning;

/// <summary>
/// "This task a day shorter": attended work by what an open day holds, a run or a wait by a day on the clock, a wait
/// in business days by one of them. Never below nothing.
/// </summary>
internal static class ShorterWork
{
    private const int Day = 1440;
    private const int Weeks = 4;
    private const int MostStages = 8;

    public static IEnumerable<WhatIfIdea> Of(EpisodeChain chain)
    {
        var openDay = OpenDay(chain.Plan);
        return chain.Stages
            .Where(stage => stage is { Begun: false, Minutes: > 0, Key.IsShot: false })
            .OrderByDescending(stage => stage.Minutes)
            .Take(MostStages)
            .Select(stage => stage.Key.IsTail ? OfTail(chain.Workshop, stage, openDay) : OfTask(chain.Workshop, stage, openDay))
            .OfType<WhatIfIdea>();
    }

    /// <summary>Open minutes of an average day on which anybody is present, over the next weeks.</summary>
    private static int OpenDay(Plan plan)
    {
        var axis = new TimeAxis(plan.Request.PlannedAt, plan.Zone, Weeks * 7 * Day);
        var presence = new StationTable(plan.Request.Workshop, axis).Presence;
        var days = Enumerable.Range(0, presence.Count).Select(span => axis.DateOf(presence.Starts[span])).Distinct().Count();
        return days == 0 ? 0 : presence.TotalWork / days;
    }

    private static WhatIfIdea? OfTask(Workshop workshop, PlannedStage planned, int openDay)
    {
        var task = workshop.Tasks.Find(planned.Key.Task)!;
        var stage = task.Stages.First(s => s.Id == planned.Key.Stage);
        var less = stage.Kind == StageKind.Attended ? openDay : Day;
        if (less == 0 || Shorter(stage, less) is not { } shorter)
        {
            return null;
        }

        var change = new TaskChange(task.Id, task with { Stages = task.Stages.Select(s => s.Id == stage.Id ? shorter : s).ToValueList() });
        var amount = stage.BusinessDays is null ? Words.Minutes((int)Math.Min(less, stage.Hours * 60)) : "a business day";
        return new WhatIfIdea(WhatIfKind.ShorterByADay, $"“{planned.Name}” takes {amount} less", change);
    }

    private static Stage? Shorter(Stage stage, int minutes) => stage switch
    {
        { BusinessDays: 1 } => null,
        { BusinessDays: { } days } => stage with { BusinessDays = days - 1 },
        _ => stage with
        {
            Hours = Left(stage.Hours, minutes),
            LowHours = Scaled(stage.LowHours, stage.Hours, minutes),
            HighHours = Scaled(stage.HighHours, stage.Hours, minutes),
        },
    };

    private static WhatIfIdea? OfTail(Workshop workshop, PlannedStage planned, int openDay)
    {
        if (openDay == 0 || workshop.Episodes.Find(planned.Key.Episode) is not { } episode)
        {
            return null;
        }

        var tail = Tails.Of(workshop, episode);
        var part = tail[planned.Key.Part];
        var shorter = part with
        {
            Hours = Left(part.Hours, openDay),
            LowHours = Scaled(part.LowHours, part.Hours, openDay),
            HighHours = Scaled(part.HighHours, part.Hours, openDay),
        };
        var change = new EpisodeChange(episode.Id, episode with { Tail = tail.Select((p, i) => i == planned.Key.Part ? shorter : p).ToValueList() });
        var amount = Words.Minutes((int)Math.Min(openDay, part.Hours * 60));
        return new WhatIfIdea(WhatIfKind.ShorterByADay, $"“{planned.Name}” takes {amount} less", change);
    }

    private static decimal Left(decimal hours, int minutes) => Math.Max(0, hours - (minutes / 60m));

    /// <summary>The range keeps its shape.</summary>
    private static decimal? Scaled(decimal? bound, decimal hours, int minutes) =>
        bound is { } value ? hours == 0 ? 0 : value * Left(hours, minutes) / hours : null;
}
