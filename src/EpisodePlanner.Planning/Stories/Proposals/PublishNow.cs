namespace EpisodePlanner.Planning;

/// <summary>What an episode of a series would be if it were cut right behind what is done: "could I publish now?"</summary>
public sealed record PublishNow
{
    /// <summary>The plan it is about.</summary>
    public required Plan Plan { get; init; }

    /// <summary>The series.</summary>
    public required Series Series { get; init; }

    /// <summary>The milestones at the beginning of what is still to be told whose work is done; none for an episode from footage.</summary>
    public required ValueList<Milestone> Done { get; init; }

    /// <summary>The shots of the tasks that lead to them.</summary>
    public required ValueList<Shot> Shots { get; init; }

    /// <summary>The change that makes this episode; null where the plan has it already.</summary>
    public required Change? Change { get; init; }

    /// <summary>The plan with it.</summary>
    public required Plan Then { get; init; }

    /// <summary>The episode in that plan.</summary>
    public required PlannedEpisode Episode { get; init; }

    /// <summary>Why it shows no more, or no less; null where nothing stands in the way.</summary>
    public required string? Because { get; init; }

    /// <summary>Minutes on screen, low to high; null where some milestone has none, or there is no milestone.</summary>
    public (decimal Low, decimal High)? ScreenMinutes => Done.Count > 0 && Done.All(milestone => milestone.ScreenMinutes is not null)
        ? (Done.Sum(milestone => milestone.ScreenMinutes!.Low), Done.Sum(milestone => milestone.ScreenMinutes!.High))
        : null;

    /// <summary>The required shots that are not got.</summary>
    public ValueList<Shot> Lacking => Shots.Where(shot => shot.Required && shot.State != ShotState.Got).ToValueList();

    /// <summary>The series' silences with it.</summary>
    public Outlook Outlook => Then.Series.Single(outlook => outlook.Series == Series.Id);

    /// <summary>What differs from the plan.</summary>
    public PlanDifference Difference => new(Plan, Then);

    /// <summary>Asks for a series.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="series">The id of the series.</param>
    /// <param name="stop">Ends the planning.</param>
    /// <returns>The answer; null where the plan has no such series or it rests, or the change is refused.</returns>
    public static PublishNow? Of(Plan plan, Id series, CancellationToken stop = default)
    {
        var line = StoryLines.Of(DraftedPlan.Of(plan).Draft).FirstOrDefault(line => line.Series.Id == series);
        if (line is not { Series.State: SeriesState.Active })
        {
            return null;
        }

        var done = DoneUnits(plan, line);
        var last = LastCut(line, done);
        return last < 0 ? FromFootage(plan, line, stop) : Cut(plan, line, last, done, stop);
    }

    /// <summary>How many units at the beginning of the story need no more work of the build.</summary>
    private static int DoneUnits(Plan plan, StoryLine line)
    {
        var open = plan.Stages.Where(stage => stage.Key.IsTask).Select(stage => stage.Key.Task).ToHashSet();
        var unfinished = plan.Request.Workshop.Tasks
            .Where(task => task.Milestone is not null && open.Contains(task.Id))
            .Select(task => task.Milestone!.Value)
            .ToHashSet();
        return line.Units.TakeWhile(unit => unit.Milestones.Count > 0 && unit.Milestones.All(milestone => !unfinished.Contains(milestone.Id))).Count();
    }

    /// <summary>The last of the done units with which an episode may end; −1 for none.</summary>
    private static int LastCut(StoryLine line, int done)
    {
        var fixedAt = Enumerable.Range(0, done).Where(unit => line.Units[unit].Fixed is not null).Select(unit => (int?)unit).FirstOrDefault();
        return fixedAt is { } pinned
            ? pinned == 0 ? 0 : pinned - 1
            : Enumerable.Range(0, done).Where(line.MayEndAfter).Append(-1).Max();
    }

    private static PublishNow? Cut(Plan plan, StoryLine line, int last, int done, CancellationToken stop)
    {
        var cuts = line.Now;
        for (var unit = 0; unit <= last; unit++)
        {
            cuts = cuts.With(unit, unit == last || line.MustEndAfter(unit));
        }

        var change = cuts == line.Now ? null : new Batch(CutChanges.Of(plan.Request.Workshop, line, cuts).ToValueList());
        var milestones = Enumerable.Range(0, last + 1).SelectMany(unit => line.Units[unit].Milestones).ToValueList();
        var because = last + 1 < done ? $"\u201c{line.Units[last + 1].Milestones[0].Name}\u201d is done too, but no episode may end there" : null;
        return Make(plan, line, milestones, change, because, episode => episode.Milestones.Count > 0 && episode.Milestones[^1] == milestones[^1].Id, stop);
    }

    private static PublishNow? FromFootage(Plan plan, StoryLine line, CancellationToken stop)
    {
        var footage = OtherEpisodes.Changes(plan, line.Series.Id).Last();
        var id = ((EpisodeChange)footage.Change).Id;
        return Make(plan, line, [], footage.Change, "no milestone is done that is not shown yet", episode => episode.Id == id, stop);
    }

    private static PublishNow? Make(
        Plan plan, StoryLine line, ValueList<Milestone> milestones, Change? change, string? because, Func<PlannedEpisode, bool> isIt, CancellationToken stop)
    {
        var then = change is null ? plan : Replanning.After(plan, change, stop);
        return then?.Episodes.FirstOrDefault(episode => episode.Series == line.Series.Id && isIt(episode)) is not { } episode
            ? null
            : new PublishNow
            {
                Plan = plan,
                Series = line.Series,
                Done = milestones,
                Shots = ShotsOf(plan, milestones),
                Change = change,
                Then = then,
                Episode = episode,
                Because = because,
            };
    }

    private static ValueList<Shot> ShotsOf(Plan plan, ValueList<Milestone> milestones)
    {
        var shown = milestones.Select(milestone => milestone.Id).ToHashSet();
        return plan.Request.Workshop.Tasks
            .Where(task => task.Milestone is { } milestone && shown.Contains(milestone))
            .SelectMany(task => task.Shots)
            .ToValueList();
    }
}
