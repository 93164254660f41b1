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
            .Select(start => (Stage: draft.Bench.Find(Key(draft, start)), Start: draft.Axis.MinuteOf(start.Start)))
            .Where(x => x.Stage is not null)
            .Select(x => (Stage: x.Stage!.Value, x.Start))
            .DistinctBy(x => x.Stage)
            .ToList();
        return new AcceptedOrder(
            [.. accepted.Select(x => x.Stage)], [.. accepted.Where(x => x.Start is >= 0 and < Week)]);
    }

    private static StageKey Key(PlanDraft draft, AcceptedStart start)
    {
        if (start.Task is { } task)
        {
            return StageKey.OfTask(task, start.Stage ?? default);
        }

        var episode = start.Episode ?? default;
        var tail = Tails.Of(draft.Workshop, draft.Workshop.Episodes.Find(episode));
        var part = Enumerable.Range(0, tail.Count).FirstOrDefault(i => tail[i].Kind == start.Part, 0);
        return StageKey.OfTail(episode, part);
    }
}
