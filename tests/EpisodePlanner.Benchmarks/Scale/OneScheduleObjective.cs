using System.Diagnostics;
using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Benchmarks.Scale;

/// <summary>
/// An objective that looks at the clock instead of the schedule. The search asks it once a schedule, so the time between
/// two questions is the time of one schedule: its list of keys and its generation.
/// </summary>
/// <param name="better">Which schedule, from 0, is to count as better than all others; no one is where left out.</param>
internal sealed class OneScheduleObjective(int better = int.MaxValue) : IScheduleObjective
{
    private readonly List<TimeSpan> times = [];
    private long last;
    private int asked;

    public int Parts => 1;

    /// <summary>The times of the schedules after the first, which also bears the search's preparations.</summary>
    public IReadOnlyList<TimeSpan> Times => times;

    public void Evaluate(ReadOnlySpan<int> starts, ReadOnlySpan<int> finishes, Span<long> row)
    {
        var now = Stopwatch.GetTimestamp();
        if (asked > 0)
        {
            times.Add(Stopwatch.GetElapsedTime(last, now));
        }

        row[0] = asked == better ? 0 : 1;
        asked++;
        last = Stopwatch.GetTimestamp();
    }
}
