namespace EpisodePlanner.Planning;

/// <summary>A milestone still to be told, and what it would do to end an episode there, or not to.</summary>
public sealed record CutPlace
{
    /// <summary>The milestone.</summary>
    public required Milestone Milestone { get; init; }

    /// <summary>The episode that shows it in the plan.</summary>
    public required PlannedEpisode Episode { get; init; }

    /// <summary>Whether that episode ends with it.</summary>
    public required bool IsCut { get; init; }

    /// <summary>Why nothing is proposed here; null where something is.</summary>
    public required string? Stays { get; init; }

    /// <summary>The cut set or taken away; null where nothing is proposed, or the trials were stopped.</summary>
    public required StoryProposal? Proposal { get; init; }

    /// <summary>The nearest cut that may move, moved here; null where this is a cut, or none may move.</summary>
    public required StoryProposal? Moved { get; init; }
}

/// <summary>Looks at every place where one series could be cut.</summary>
public static class CutPlaces
{
    /// <summary>The milestones still to be told, in story order, each with a real plan for the cut set or taken away there.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="series">The id of the series.</param>
    /// <param name="progress">Told the share done, 0 to 1.</param>
    /// <param name="stop">Ends the trials.</param>
    /// <returns>The places; null where the plan has no such series.</returns>
    public static ValueList<CutPlace>? Of(Plan plan, Id series, IProgress<double>? progress = null, CancellationToken stop = default)
    {
        var line = StoryLines.Of(DraftedPlan.Of(plan).Draft).FirstOrDefault(line => line.Series.Id == series);
        return line?.Units.SelectMany((unit, index) =>
        {
            var places = Places(plan, line, index, stop);
            progress?.Report((index + 1.0) / line.Units.Count);
            return places;
        }).ToValueList();
    }

    /// <summary>Every cut that could be set or moved, not planned yet.</summary>
    internal static IEnumerable<StoryIdea> Changes(Plan plan, Id series)
    {
        var line = StoryLines.Of(DraftedPlan.Of(plan).Draft).FirstOrDefault(line => line.Series.Id == series);
        return line is null ? [] : Enumerable.Range(0, line.Units.Count)
            .Where(index => Stays(line, index) is null && !line.Now.EndsAfter[index])
            .SelectMany(index => new[] { Turned(plan, line, index), Moved(plan, line, index) })
            .OfType<StoryIdea>();
    }

    private static IEnumerable<CutPlace> Places(Plan plan, StoryLine line, int index, CancellationToken stop)
    {
        var unit = line.Units[index];
        var stays = Stays(line, index);
        var isOpen = stays is null && !stop.IsCancellationRequested;
        foreach (var milestone in unit.Milestones)
        {
            yield return new CutPlace
            {
                Milestone = milestone,
                Episode = plan.Episodes.First(episode => episode.Milestones.Contains(milestone.Id)),
                IsCut = milestone == unit.Milestones[^1] && line.Now.EndsAfter[index],
                Stays = stays,
                Proposal = isOpen ? Planned(plan, line, Turned(plan, line, index), stop) : null,
                Moved = isOpen ? Planned(plan, line, Moved(plan, line, index), stop) : null,
            };
        }
    }

    private static string? Stays(StoryLine line, int index)
    {
        if (line.Units[index].FixedBy is { } why)
        {
            return why;
        }

        return index == line.Units.Count - 1 ? "the last that is planned"
            : line.MustEndAfter(index) ? "the next episode is settled"
            : line.Now.EndsAfter[index] || line.MayEndAfter(index) ? null
            : line.Units[index].Milestones[^1].TogetherWithNext ? "shown together with the next"
            : "it does not satisfy by itself";
    }

    private static StoryProposal? Planned(Plan plan, StoryLine line, StoryIdea? idea, CancellationToken stop) => idea is null
        ? null
        : StoryProposal.Of(plan, idea.Move, idea.Says, (line.Series.Id, idea.About), idea.Change, stop);

    private static StoryIdea Turned(Plan plan, StoryLine line, int index) => line.Now.EndsAfter[index]
        ? Idea(plan, line, index, line.Now.With(index, false), StoryMove.Join, $"no episode ends with {Name(line, index)}")
        : Idea(plan, line, index, line.Now.With(index, true), StoryMove.CutHere, $"an episode ends with {Name(line, index)}");

    private static StoryIdea? Moved(Plan plan, StoryLine line, int index)
    {
        if (line.Now.EndsAfter[index] || NearestCut(line, index) is not { } from)
        {
            return null;
        }

        var cuts = line.Now.With(from, false).With(index, true);
        return Idea(plan, line, index, cuts, StoryMove.MoveCut, $"an episode ends with {Name(line, index)} instead of {Name(line, from)}");
    }

    /// <summary>The nearest cut that may move to a unit, with no cut between them; of two as near the later.</summary>
    private static int? NearestCut(StoryLine line, int index)
    {
        var near = Enumerable.Range(0, line.Units.Count)
            .Where(unit => line.Now.EndsAfter[unit] && !Between(line, unit, index))
            .OrderBy(unit => Math.Abs(unit - index))
            .ThenByDescending(unit => unit);
        return near.Where(unit => !line.MustEndAfter(unit)).Select(unit => (int?)unit).FirstOrDefault();
    }

    private static bool Between(StoryLine line, int unit, int index) => Enumerable
        .Range(Math.Min(unit, index) + 1, Math.Max(0, Math.Abs(unit - index) - 1))
        .Any(between => line.Now.EndsAfter[between]);

    private static StoryIdea Idea(Plan plan, StoryLine line, int index, StoryCuts cuts, StoryMove move, string says) => new(
        move,
        says,
        line.Units[index].Milestones[^1].Id,
        new Batch(CutChanges.Of(plan.Request.Workshop, line, cuts).ToValueList()));

    private static string Name(StoryLine line, int index) => $"\u201c{line.Units[index].Milestones[^1].Name}\u201d";
}
