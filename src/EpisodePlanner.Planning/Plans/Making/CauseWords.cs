using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Planning;

/// <summary>Says causes in words, to follow "because".</summary>
internal sealed class CauseWords(PlanDraft draft, BenchSchedule schedule)
{
    public PlannedCause Of(int stage, StartCause cause) => new(
        cause.Cause.Kind,
        Say(stage, cause.Cause),
        cause.Cause.Stage >= 0 ? draft.Bench.Stages[cause.Cause.Stage].Key : null,
        cause.Cause.Station >= 0 ? draft.Stations.IdOf(cause.Cause.Station) : null,
        cause.CoBlockers.Select(blocker => Say(stage, blocker)).ToValueList());

    private string Say(int stage, Blocker blocker) => blocker.Kind switch
    {
        CauseKind.Now => "nothing holds it",
        CauseKind.Begun => "it is going on",
        CauseKind.Predecessor => SayPredecessor(blocker),
        CauseKind.GreatestLag => SayGreatestLag(blocker),
        CauseKind.StationHeld => $"{Station(blocker)} {IsOrAre(blocker)} taken by \u201c{Name(blocker.Stage)}\u201d {Until(stage, blocker.Stage)}",
        CauseKind.AcceptedOrder => $"the accepted order gives {Station(blocker)} to \u201c{Name(blocker.Stage)}\u201d first, {Until(stage, blocker.Stage)}",
        CauseKind.ClosedHours when blocker.Limit >= 0 => $"of {draft.Stations.Limits[blocker.Limit].Name}",
        CauseKind.ClosedHours => SayClosed(stage, blocker.Station),
        CauseKind.Presence => "nobody is there before",
        CauseKind.MinimumBlock => $"the openings before are shorter than {Block(stage)}",
        CauseKind.SettingUp => "setting up and tidying would not fit before",
        _ => $"it may not start before {Moment(schedule.Start(stage))}",
    };

    private string SayPredecessor(Blocker blocker)
    {
        if (blocker.Link < 0)
        {
            return $"it follows \u201c{Name(blocker.Stage)}\u201d without a gap";
        }

        var link = draft.Problem.Links[blocker.Link];
        var start = link.Kind is LinkKind.TogetherStart or LinkKind.StartToFinish;
        var end = start ? "starts" : "is finished";
        var moment = Moment(start ? schedule.Start(blocker.Stage) : schedule.Finish(blocker.Stage));
        var lag = link.Lag == 0 ? "" : $", and {Lag(link)} must pass";
        return $"\u201c{Name(blocker.Stage)}\u201d {end} {moment}{lag}";
    }

    /// <summary>"“Second coat” must start within 24 h of its end and can't before Thu 11 Mar 19:00".</summary>
    private string SayGreatestLag(Blocker blocker)
    {
        var link = draft.Problem.Links[blocker.Link];
        var arrives = link.Kind is LinkKind.After or LinkKind.TogetherStart ? ("start", schedule.Start(link.To)) : ("be finished", schedule.Finish(link.To));
        var leaves = link.Kind is LinkKind.After or LinkKind.TogetherFinish ? "end" : "start";
        return $"\u201c{Name(link.To)}\u201d must {arrives.Item1} within {Words.Minutes(link.AtMost!.Value)} of its {leaves}, "
            + $"which it does {Moment(arrives.Item2)}";
    }

    private static string Lag(BenchLink link) =>
        $"{Words.Minutes(Math.Abs(link.Lag))}{(link.LagHours is null ? "" : " of open hours")}{(link.Lag < 0 ? " less" : "")}";

    private string SayClosed(int stage, int station) => draft.Stations.Stations[station].Kind == StationKind.Person
        ? $"{Station(station)} {(IsYou(station) ? "are" : "is")} not free before"
        : $"{Station(station)} is closed before{Opening(stage)}";

    private string Opening(int stage) => schedule.Start(stage) == 0 ? "" : $" {Moment(schedule.Start(stage))}";

    /// <summary>The end of the holder's last sitting before the stage starts; a holder may pause and go on after it.</summary>
    private string Until(int stage, int holder)
    {
        var end = -1;
        foreach (var part in schedule.Parts(holder))
        {
            end = part.Kind != PartKind.Run && part.End <= schedule.Start(stage) ? part.End : end;
        }

        return $"until {Moment(end < 0 ? schedule.Finish(holder) : end)}";
    }

    private string Block(int stage)
    {
        var spec = draft.Problem.Stages[stage];
        return Words.Minutes(Math.Min(spec.MinimumBlock, spec.Minutes));
    }

    private string Name(int stage) => draft.Bench.Stages[stage].Stage.Name;

    private string Station(Blocker blocker) => Station(blocker.Station);

    private string Station(int station) => draft.Stations.Stations[station].Name;

    private string IsOrAre(Blocker blocker) => IsYou(blocker.Station) ? "are" : "is";

    private bool IsYou(int station) => draft.Stations.Stations[station].Name == Defaults.Maker.Name;

    private string Moment(int minute) => Words.Moment(draft.Axis.LocalOf(minute));
}
