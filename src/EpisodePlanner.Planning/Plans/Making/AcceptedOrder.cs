namespace EpisodePlanner.Planning;

/// <summary>What the maker accepted, in terms of the bench problem.</summary>
/// <param name="Stages">The accepted stages that are left, in order.</param>
/// <param name="StartsWithinAWeek">Accepted starts within seven days of the planning moment.</param>
internal sealed record AcceptedOrder(IReadOnlyList<int> Stages, IReadOnlyList<(int Stage, int Start)> StartsWithinAWeek)
{
    private const int Week = 7 * 1440;

    public static AcceptedOrder Of(PlanDraft draft)
    {
        var accepted = (draft.Workshop.Accepted?.Starts ?? [])
            .Select(start => (Stage: draft.Bench.Find(AcceptedStarts.KeyOf(draft.Workshop, start)), Start: draft.Axis.MinuteOf(start.Start)))
            .Where(x => x.Stage is not null)
            .Select(x => (Stage: x.Stage!.Value, x.Start))
            .DistinctBy(x => x.Stage)
            .ToList();
        return new AcceptedOrder(
            [.. accepted.Select(x => x.Stage)], [.. accepted.Where(x => x.Start is >= 0 and < Week)]);
    }
}

/// <summary>Which stretch of work an accepted start is about.</summary>
internal static class AcceptedStarts
{
    public static StageKey KeyOf(Workshop workshop, AcceptedStart start)
    {
        if (start.Task is { } task)
        {
            return start.Shot is { } shot ? StageKey.OfShot(task, shot) : StageKey.OfTask(task, start.Stage ?? default);
        }

        var episode = start.Episode ?? default;
        var tail = Tails.Of(workshop, workshop.Episodes.Find(episode));
        var part = Enumerable.Range(0, tail.Count).FirstOrDefault(i => tail[i].Kind == start.Part, 0);
        return StageKey.OfTail(episode, part);
    }
}
