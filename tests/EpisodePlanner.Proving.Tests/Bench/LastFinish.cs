using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Proving.Tests.Bench;

/// <summary>How many stages are unplaced, then the last finish of some.</summary>
internal sealed class LastFinish(IReadOnlyList<int> stages) : IScheduleObjective
{
    public int Parts => 2;

    public void Evaluate(ReadOnlySpan<int> starts, ReadOnlySpan<int> finishes, Span<long> row)
    {
        row.Clear();
        foreach (var finish in finishes)
        {
            row[0] += finish < 0 ? 1 : 0;
        }

        foreach (var stage in stages)
        {
            row[1] = Math.Max(row[1], finishes[stage]);
        }
    }
}
