namespace EpisodePlanner.Planning;

/// <summary>
/// Why an episode goes out when it does, and what would make a difference. Every gain, and every day that a task can
/// wait, was found by planning again.
/// </summary>
public sealed record EpisodeWhy
{
    /// <summary>The plan it is about.</summary>
    public required Plan Plan { get; init; }

    /// <summary>The episode, with its chain.</summary>
    public required PlannedEpisode Episode { get; init; }

    /// <summary>What would make a difference, the most days first; those that make none last.</summary>
    public required ValueList<WhatIf> WhatIfs { get; init; }

    /// <summary>Work of the next two weeks, by start: whether it could wait a day.</summary>
    public required ValueList<DayLater> DayLater { get; init; }

    /// <summary>The stations that work waits for until this episode is ready, the longest wait first.</summary>
    public required ValueList<Contest> Contests { get; init; }

    /// <summary>How many differences, and days of waiting, there were to try.</summary>
    public required int ToTry { get; init; }

    /// <summary>How many of them were tried; fewer where somebody ended the trials.</summary>
    public required int Tried { get; init; }

    /// <summary>Whether everything was tried.</summary>
    public bool IsComplete => Tried == ToTry;

    /// <summary>Answers for one episode of a plan.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="episode">The id of one of its episodes.</param>
    /// <param name="progress">Told the share done, 0 to 1.</param>
    /// <param name="stop">Ends the trials; what was tried by then is told.</param>
    /// <returns>Null where the plan has no such episode to come.</returns>
    public static EpisodeWhy? Of(Plan plan, Id episode, IProgress<double>? progress = null, CancellationToken stop = default)
    {
        if (plan.Episodes.FirstOrDefault(e => e.Id == episode) is not { } about)
        {
            return null;
        }

        var ideas = WhatIfIdeas.Of(plan, about);
        var waiting = WaitingADay.Candidates(plan);
        var share = new SharedProgress(progress, ideas.Count + waiting.Count);
        var whatIfs = WhatIf.Try(plan, about, ideas, share, stop);
        var dayLater = WaitingADay.Try(plan, waiting, share, stop);
        return new EpisodeWhy
        {
            Plan = plan,
            Episode = about,
            WhatIfs = whatIfs,
            DayLater = dayLater,
            ToTry = ideas.Count + waiting.Count,
            Tried = share.Done,
            Contests = Contest.Of(plan, about.Ready ?? plan.Horizon),
        };
    }
}

/// <summary>Progress over trials of several sorts.</summary>
/// <param name="progress">Told the share done.</param>
/// <param name="all">How many trials there are.</param>
internal sealed class SharedProgress(IProgress<double>? progress, int all)
{
    private readonly Lock gate = new();

    /// <summary>How many are done.</summary>
    public int Done { get; private set; }

    /// <summary>One more is done; from any thread.</summary>
    public void Step()
    {
        lock (gate)
        {
            Done++;
            progress?.Report(Math.Min(1, (double)Done / all));
        }
    }
}
