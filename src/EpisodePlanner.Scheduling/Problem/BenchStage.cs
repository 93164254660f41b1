namespace EpisodePlanner.Scheduling;

/// <summary>One choice of stations with which a stage can be done.</summary>
public sealed record StageMode
{
    /// <summary>
    /// Stations taken together. Attended: while work is going on. Run: people and places taken by a load or unload that
    /// takes hands; never the machine. Wait: the places it fills.
    /// </summary>
    public IReadOnlyList<int> Stations { get; init; } = [];

    /// <summary>The machine of a run; −1 for other stages.</summary>
    public int Machine { get; init; } = -1;

    /// <summary>Limits (indices into <see cref="BenchProblem.Limits"/>) that must be open while it works or runs.</summary>
    public IReadOnlyList<int> Limits { get; init; } = [];

    /// <summary>Whether this machine may run this stage with nobody present.</summary>
    public bool RunsAlone { get; init; }
}

/// <summary>One stage to be scheduled. Minutes throughout; minute 0 is the moment of planning.</summary>
public sealed record BenchStage
{
    /// <summary>Its name, for reasons.</summary>
    public required string Name { get; init; }

    /// <summary>Attended, run or wait.</summary>
    public required StageKind Kind { get; init; }

    /// <summary>
    /// Attended: minutes of work. Run: machine minutes between load and unload. Wait: minutes, elapsed or of
    /// <see cref="WaitHours"/>. Zero is allowed; an attended stage of no minutes needs no station and no open hours.
    /// </summary>
    public required int Minutes { get; init; }

    /// <summary>The choices; at least one. A wait without places has one empty mode.</summary>
    public required IReadOnlyList<StageMode> Modes { get; init; }

    /// <summary>
    /// Attended: every stretch of work has at least min(this, work left) minutes; shorter openings are skipped. At least
    /// <see cref="Minutes"/> means one unbroken stretch.
    /// </summary>
    public int MinimumBlock { get; init; } = 1;

    /// <summary>Attended: its machines and places stay taken from its start to its finish.</summary>
    public bool StaysSetUp { get; init; }

    /// <summary>Run: minutes of loading, directly before the run.</summary>
    public int LoadMinutes { get; init; }

    /// <summary>Run: minutes of unloading, at some time after the run; until they end the machine is taken.</summary>
    public int UnloadMinutes { get; init; }

    /// <summary>Run: the load takes the mode's stations; otherwise it is a touch that only needs somebody present.</summary>
    public bool LoadTakesHands { get; init; }

    /// <summary>Run: the unload takes the mode's stations; otherwise it is a touch.</summary>
    public bool UnloadTakesHands { get; init; }

    /// <summary>
    /// Run: at least <see cref="Minutes"/>; without permission to run alone a run begins only where this many minutes
    /// from its begin are open and attended to.
    /// </summary>
    public int FitMinutes { get; init; }

    /// <summary>Run: the only minutes at which its end can be noticed; null for any minute with somebody present.</summary>
    public IntervalCalendar? LookAt { get; init; }

    /// <summary>Wait: what its minutes are counted in; null for elapsed minutes.</summary>
    public IntervalCalendar? WaitHours { get; init; }

    /// <summary>
    /// Wait: the attended stage at whose finish it begins without a gap (a glue-up that goes on filling its place); −1 for
    /// none. One plain link from that stage's finish must lead to it, and no other.
    /// </summary>
    public int GluedTo { get; init; } = -1;

    /// <summary>Not before this minute.</summary>
    public int NotBefore { get; init; }

    /// <summary>
    /// Already going on at minute 0. It is placed before all others; a run begun has no load left and starts at 0
    /// whatever the hours say; attended work begun is set up already if it has one mode (of several, nobody knows which).
    /// Links into it are not looked at.
    /// </summary>
    public bool Begun { get; init; }

    /// <summary>When its result is wanted, for the order in which stages are tried; <see cref="int.MaxValue"/> for never.</summary>
    public int Due { get; init; } = int.MaxValue;

    /// <summary>Its due date matters more than those that are not firm.</summary>
    public bool DueIsFirm { get; init; }

    /// <summary>Results of one group are wanted in the order of their due dates; −1 for no group.</summary>
    public int DueGroup { get; init; } = -1;
}

/// <summary>One stage waiting for another.</summary>
/// <param name="From">The stage waited for.</param>
/// <param name="To">The stage that waits.</param>
/// <param name="Kind">Which ends are linked.</param>
public sealed record BenchLink(int From, int To, LinkKind Kind)
{
    /// <summary>The least lag in minutes; may be negative for elapsed minutes.</summary>
    public int Lag { get; init; }

    /// <summary>What the lag counts; null for elapsed minutes.</summary>
    public IntervalCalendar? LagHours { get; init; }

    /// <summary>
    /// The greatest lag in elapsed minutes; null for none. The stage it leaves from starts late enough for it; where no
    /// moment keeps it the stage that waits stays unplaced. Out of or into a stage that is going on it binds nothing, since
    /// that one can't begin later any more; what is missed there is told.
    /// </summary>
    public int? AtMost { get; init; }
}
