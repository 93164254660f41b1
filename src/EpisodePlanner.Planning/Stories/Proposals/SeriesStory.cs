namespace EpisodePlanner.Planning;

/// <summary>One series' story: where it could be cut, what could be told besides, and the last slot within its promise.</summary>
public sealed record SeriesStory
{
    /// <summary>The plan it is about.</summary>
    public required Plan Plan { get; init; }

    /// <summary>The series.</summary>
    public required Series Series { get; init; }

    /// <summary>The milestones still to be told, in story order.</summary>
    public required ValueList<CutPlace> Places { get; init; }

    /// <summary>Episodes that need no more of the build.</summary>
    public required ValueList<StoryProposal> Others { get; init; }

    /// <summary>The last slot within its promise; null where it has no such promise, rests, or nothing is out.</summary>
    public required LastSlot? LastSlot { get; init; }

    /// <summary>Every proposal.</summary>
    public IEnumerable<StoryProposal> Proposals => Places
        .SelectMany(place => new[] { place.Proposal, place.Moved })
        .OfType<StoryProposal>()
        .Concat(Others);

    /// <summary>Looks at one series of a plan.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="series">The id of the series.</param>
    /// <param name="progress">Told the share done, 0 to 1.</param>
    /// <param name="stop">Ends the trials; what was tried by then is told.</param>
    /// <returns>The story; null where the plan has no such series.</returns>
    public static SeriesStory? Of(Plan plan, Id series, IProgress<double>? progress = null, CancellationToken stop = default) =>
        CutPlaces.Of(plan, series, progress, stop) is { } places
            ? new SeriesStory
            {
                Plan = plan,
                Series = plan.Request.Workshop.Series.Find(series)!,
                Places = places,
                Others = OtherEpisodes.Of(plan, series, stop),
                LastSlot = LastSlot.Of(plan, series),
            }
            : null;
}
