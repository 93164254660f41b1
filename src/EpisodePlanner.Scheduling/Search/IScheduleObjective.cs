namespace EpisodePlanner.Scheduling;

/// <summary>
/// What makes one schedule better than another: a row of integers computed from starts and finishes. Rows are compared
/// from the left; the first difference decides and less is better.
/// </summary>
public interface IScheduleObjective
{
    /// <summary>How many integers a row has.</summary>
    int Parts { get; }

    /// <summary>
    /// Whether nothing but the last finish counts. Then double justification never makes a row worse, and a search may
    /// apply it to every schedule.
    /// </summary>
    bool OnlyEndCounts => false;

    /// <summary>Writes the row of a schedule.</summary>
    /// <param name="starts">By stage, minutes; −1 where unplaced.</param>
    /// <param name="finishes">By stage, minutes; −1 where unplaced.</param>
    /// <param name="row">As many places as <see cref="Parts"/>.</param>
    void Evaluate(ReadOnlySpan<int> starts, ReadOnlySpan<int> finishes, Span<long> row);
}

/// <summary>The simplest objective: how many stages are unplaced, then the last finish.</summary>
public sealed class Makespan : IDeadlineObjective
{
    /// <inheritdoc/>
    public int Parts => 2;

    /// <inheritdoc/>
    public bool OnlyEndCounts => true;

    /// <inheritdoc/>
    public void Evaluate(ReadOnlySpan<int> starts, ReadOnlySpan<int> finishes, Span<long> row)
    {
        row.Clear();
        foreach (var finish in finishes)
        {
            row[0] += finish < 0 ? 1 : 0;
            row[1] = Math.Max(row[1], finish);
        }
    }

    /// <inheritdoc/>
    public void LatestFinishes(ReadOnlySpan<long> row, Span<int> latest) =>
        latest.Fill(row[0] > 0 ? int.MaxValue : (int)Math.Min(row[1], int.MaxValue));
}
