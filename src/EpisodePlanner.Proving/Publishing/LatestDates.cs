using EpisodePlanner.Proving.Bench;
using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Proving.Publishing;

/// <summary>
/// The latest finishes that hours and links leave, as if every stage had its stations to itself, so that an episode can
/// use a window; <see cref="EarliestDates.Never"/> for stages that may finish at any time.
/// </summary>
internal sealed class LatestDates
{
    private readonly BenchProblem problem;
    private readonly WorkHours hours;
    private readonly NeededStages needed;

    public LatestDates(BenchProblem problem, WorkHours hours, NeededStages needed, EpisodeLine line, int window)
    {
        (this.problem, this.hours, this.needed) = (problem, hours, needed);
        Finishes = new int[problem.Stages.Count];
        Array.Fill(Finishes, EarliestDates.Never);
        foreach (var episode in line.Before)
        {
            Limit(episode.ReadyStage, line.AvailableBefore(window) - episode.Lead);
            Limit(episode.FixesStage, line.AvailableBefore(window));
        }

        Limit(line.Last.ReadyStage, line.AvailableBy(window) - line.Last.Lead);
        Limit(line.Last.FixesStage, line.AvailableBy(window));
        foreach (var stage in needed.Order.Reverse())
        {
            MoveBack(stage);
        }
    }

    /// <summary>By stage.</summary>
    public int[] Finishes { get; }

    private void Limit(int stage, int by)
    {
        if (stage >= 0)
        {
            Finishes[stage] = Math.Min(Finishes[stage], by);
        }
    }

    private void MoveBack(int stage)
    {
        if (Finishes[stage] == EarliestDates.Never)
        {
            return;
        }

        var start = LatestStart(problem.Stages[stage], Finishes[stage]);
        foreach (var link in needed.Into(stage))
        {
            // A lag that is counted in hours takes at least its own minutes.
            if (link.Kind is LinkKind.After or LinkKind.TogetherFinish)
            {
                Limit(link.From, (link.Kind == LinkKind.After ? start : Finishes[stage]) - link.Lag);
            }
        }
    }

    private int LatestStart(BenchStage about, int finish) => about.Kind switch
    {
        StageKind.Attended when about.Minutes > 0 => finish <= 0
            ? finish - about.Minutes
            : about.Modes.Max(mode => hours.OfWork(mode).LatestStart(finish, about.Minutes) ?? -1),
        StageKind.Run => finish - about.UnloadMinutes - about.Minutes - (about.Begun ? 0 : about.LoadMinutes),
        _ => finish - about.Minutes,
    };
}
