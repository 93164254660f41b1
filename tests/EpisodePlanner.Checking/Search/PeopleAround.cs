using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Checking;

/// <summary>The other work of the people around a stage, and what it leaves once setting up and tidying are paid.</summary>
internal sealed class PeopleAround
{
    private readonly Surroundings around;
    private readonly Dictionary<int, Sitting[]> sittings;

    public PeopleAround(Surroundings around, IReadOnlyList<SchedulePart[]?> placed)
    {
        this.around = around;
        var byPerson = new Dictionary<int, List<Sitting>>();
        for (var stage = 0; stage < placed.Count; stage++)
            Sittings.AddTo(byPerson, around.Problem, stage, placed[stage] ?? []);

        sittings = byPerson.ToDictionary(pair => pair.Key, pair => Sorted(pair.Key, pair.Value));
    }

    /// <summary>When a person can work at some places; open hours and other work are looked at besides.</summary>
    public Hours Windows(int person, IReadOnlyList<int> places, bool begun = false)
    {
        if (around.Relaxed.SettingUp)
            return Hours.Always;

        var others = sittings.GetValueOrDefault(person) ?? [];
        var openings = places.Aggregate(Hours.Always, (all, p) => all.And(around.Shared(person, p)));
        return Hours.From(Enumerable.Range(0, others.Length + 1).SelectMany(gap => InGap(person, places, openings, others, gap, begun)));
    }

    private IEnumerable<Stretch> InGap(int person, IReadOnlyList<int> places, Hours openings, Sitting[] others, int gap, bool isBegun)
    {
        Sitting? previous = gap > 0 ? others[gap - 1] : null;
        Sitting? next = gap < others.Length ? others[gap] : null;
        var whole = new Stretch(previous?.End ?? -Hours.Far, next?.Start ?? Hours.Far);
        if (whole.Start >= whole.End)
            yield break;

        foreach (var opening in openings.And(Hours.From([whole])).Stretches)
        {
            var from = places.ToDictionary(p => p, p => around.Shared(person, p).Around(opening.Start)!.Value);
            yield return new Stretch(
                Math.Max(opening.Start, isBegun && previous is null && opening.Start == 0 ? 0 : Earliest(from, previous)), Math.Min(opening.End, Latest(from, next)));
        }
    }

    private int Earliest(Dictionary<int, Stretch> openings, Sitting? previous)
    {
        var begun = openings.Where(o => previous is { } p && p.Places.Contains(o.Key) && p.End >= o.Value.Start)
            .Select(o => o.Key).ToHashSet();
        var fresh = openings.Where(o => !begun.Contains(o.Key)).ToArray();
        var earliest = fresh.Select(o => o.Value.Start + Station(o.Key).SetUpMinutes).Append(-Hours.Far).Max();
        return previous is not { } before ? earliest : Math.Max(
            earliest,
            before.End + Sittings.Tidy(around.Problem, before.Places.Where(p => !begun.Contains(p)))
                + Sittings.SetUp(around.Problem, fresh.Select(o => o.Key)));
    }

    private int Latest(Dictionary<int, Stretch> openings, Sitting? next)
    {
        var goingOn = openings.Where(o => next is { } n && n.Places.Contains(o.Key) && n.Start < o.Value.End)
            .Select(o => o.Key).ToHashSet();
        var last = openings.Where(o => !goingOn.Contains(o.Key)).ToArray();
        var latest = last.Select(o => o.Value.End - Station(o.Key).TidyMinutes).Append(Hours.Far).Min();
        return next is not { } after ? latest : Math.Min(
            latest,
            after.Start - Sittings.SetUp(around.Problem, after.Places.Where(p => !goingOn.Contains(p)))
                - Sittings.Tidy(around.Problem, last.Select(o => o.Key)));
    }

    private Sitting[] Sorted(int person, List<Sitting> list) =>
        [.. list.Where(s => !around.Relaxed.Held.Contains((s.Stage, person))).OrderBy(s => s.Start)];

    private Station Station(int index) => around.Problem.Stations[index];
}
