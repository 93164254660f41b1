namespace EpisodePlanner.Scheduling;

/// <summary>
/// An objective that can say, before a schedule is complete, that it will not be good enough, so that decoding can stop
/// there.
/// </summary>
public interface IDeadlineObjective : IScheduleObjective
{
    /// <summary>Writes the finishes after which a schedule can no longer be at least as good as a row.</summary>
    /// <param name="row">A row that <see cref="IScheduleObjective.Evaluate"/> wrote.</param>
    /// <param name="latest">
    /// By stage, minutes: if this stage alone finishes later, the row of the whole schedule is greater than
    /// <paramref name="row"/>. <see cref="int.MaxValue"/> where no finish is too late.
    /// </param>
    void LatestFinishes(ReadOnlySpan<long> row, Span<int> latest);
}
