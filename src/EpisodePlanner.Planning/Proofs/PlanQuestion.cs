using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Planning;

/// <summary>
/// A plan in whole numbers, for whoever proves something about it: minutes from planning, days as
/// <see cref="SilencePenalty.DayNumber"/>, stages and stations by their index in the bench problem.
/// </summary>
public sealed record PlanQuestion
{
    /// <summary>The plan's schedule.</summary>
    public required BenchSchedule Known { get; init; }

    /// <summary>The episodes to come.</summary>
    public required ValueList<AskedEpisode> Episodes { get; init; }

    /// <summary>The series: their episodes, by index, in story order.</summary>
    public required ValueList<AskedSeries> Series { get; init; }

    /// <summary>The windows in which something may go out, in the order in which they are given away.</summary>
    public required ValueList<AskedWindow> Windows { get; init; }

    /// <summary>Least days between two uploads of the channel.</summary>
    public required int DaysBetweenUploads { get; init; }

    /// <summary>The day of the channel's last upload; far in the past for none.</summary>
    public required int LastUploadDay { get; init; }

    /// <summary>What the whole plan is judged by; null where it leaves work or an episode without a date.</summary>
    public required PlanAims? Aims { get; init; }
}

/// <summary>An episode to come.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Series">Its series, by position.</param>
/// <param name="ReadyStage">The stage whose finish makes it ready; −1 where no work is left.</param>
/// <param name="FixesStage">The stage of fixes after early view; −1 for none.</param>
/// <param name="Lead">Minutes from ready to public at least.</param>
/// <param name="PinnedOpening">It goes out in no window that opens before; −1 for any.</param>
/// <param name="Planned">When the plan publishes it; −1 for never.</param>
public sealed record AskedEpisode(Id Id, int Series, int ReadyStage, int FixesStage, int Lead, int PinnedOpening, int Planned)
{
    /// <summary>The stages that must be done before it is out.</summary>
    public IEnumerable<int> Stages => new[] { ReadyStage, FixesStage }.Where(stage => stage >= 0);
}

/// <summary>A series and its episodes to come, in story order.</summary>
/// <param name="Episodes">By index.</param>
public sealed record AskedSeries(ValueList<int> Episodes);

/// <summary>A window in which one episode may go out.</summary>
/// <param name="Opening">The minute it opens; may be negative.</param>
/// <param name="End">What is ready before this minute may use it.</param>
/// <param name="Day">The day it opens.</param>
/// <param name="LastDay">The day of its last minute.</param>
/// <param name="Series">The series that may use it, by position.</param>
public sealed record AskedWindow(int Opening, int End, int Day, int LastDay, ValueList<int> Series);
