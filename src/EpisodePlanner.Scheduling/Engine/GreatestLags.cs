namespace EpisodePlanner.Scheduling.Engine;

/// <summary>
/// The greatest lags that a schedule must keep. Those out of or into a stage that is going on are not among them: what
/// has begun can't begin later any more, so they are only told.
/// </summary>
internal sealed class GreatestLags
{
    private readonly BenchProblem problem;
    private readonly int[] most;

    public GreatestLags(BenchProblem problem)
    {
        this.problem = problem;
        most = new int[problem.Links.Count];
        Binds = new bool[problem.Stages.Count];
        HoldsBack = new bool[problem.Stages.Count];
        for (var link = 0; link < most.Length; link++)
        {
            most[link] = problem.Links[link].AtMost is { } lag && CanBeKept(link) ? lag : int.MaxValue;
            if (IsAny(link))
            {
                Count++;
                Binds[problem.Links[link].To] = true;
                HoldsBack[Host(problem.Links[link].From)] = true;
            }
        }
    }

    /// <summary>How many there are.</summary>
    public int Count { get; }

    /// <summary>By stage: whether one leads to it.</summary>
    public bool[] Binds { get; }

    /// <summary>By stage: whether one leaves from it, or from a wait glued to it, so that it may have to start later.</summary>
    public bool[] HoldsBack { get; }

    /// <summary>Whether a link has a greatest lag that must be kept.</summary>
    public bool IsAny(int link) => most[link] != int.MaxValue;

    /// <summary>The last moment for the later end of a link, by the moment of its earlier end.</summary>
    public int Latest(int link, int leaves) => leaves + most[link];

    /// <summary>The first moment for the earlier end of a link, by the moment of its later end.</summary>
    public int Earliest(int link, int arrives) => arrives - most[link];

    /// <summary>The stage that moves where a stage is to move: a glued wait goes with its work.</summary>
    public int Host(int stage) => problem.Stages[stage].GluedTo is >= 0 and var host ? host : stage;

    private bool CanBeKept(int link) =>
        !problem.Stages[problem.Links[link].To].Begun
        && !problem.Stages[Host(problem.Links[link].From)].Begun
        && problem.Stages[problem.Links[link].To].GluedTo < 0;
}
