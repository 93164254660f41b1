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
        var line = StoryLines.Of(Planner.Draft(plan.Request, stop: stop).Draft).FirstOrDefault(line => line.Series.Id == series);
        return line?.Units.SelectMany((unit, index) =>
        {
            var places = Places(plan, line, index, stop);
            progress?.Report((index + 1.0) / line.Units.Count);
            return places;
        }).ToValueList();
    }

    private static IEnumerable<CutPlace> Places(Plan plan, StoryLine line, int index, CancellationToken stop)
    {
        var unit = line.Units[index];
        var stays = Stays(line, index);
        foreach (var milestone in unit.Milestones)
        {
            yield return new CutPlace
            {
                Milestone = milestone,
                Episode = plan.Episodes.First(episode => episode.Milestones.Contains(milestone.Id)),
                IsCut = milestone == unit.Milestones[^1] && line.Now.EndsAfter[index],
                Stays = stays,
                Proposal = stays is null && !stop.IsCancellationRequested ? Proposal(plan, line, index, stop) : null,
            };
        }
    }

    private static string? Stays(StoryLine line, int index)
    {
        if (line.Units[index].Fixed is { } fix)
        {
            return $"the maker has settled \u201c{fix.Title}\u201d: its cut or slot is pinned, a date was told, a timed line rides on it, or its finish is begun";
        }

        return index == line.Units.Count - 1 ? "the last that is planned"
            : line.MustEndAfter(index) ? "the next episode is settled"
            : line.Now.EndsAfter[index] || line.MayEndAfter(index) ? null
            : line.Units[index].Milestones[^1].TogetherWithNext ? "shown together with the next"
            : "it does not satisfy by itself";
    }

    private static StoryProposal? Proposal(Plan plan, StoryLine line, int index, CancellationToken stop)
    {
        var (name, isCut) = (line.Units[index].Milestones[^1].Name, line.Now.EndsAfter[index]);
        var change = new Batch(CutChanges.Of(plan.Request.Workshop, line, line.Now.With(index, !isCut)).ToValueList());
        return isCut
            ? StoryProposal.Of(plan, StoryMove.Join, $"no episode ends with \u201c{name}\u201d", line.Series.Id, change, stop)
            : StoryProposal.Of(plan, StoryMove.CutHere, $"an episode ends with \u201c{name}\u201d", line.Series.Id, change, stop);
    }
}
