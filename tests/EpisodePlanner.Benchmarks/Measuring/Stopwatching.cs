using System.Diagnostics;

namespace EpisodePlanner.Benchmarks.Measuring;

/// <summary>Measures how long something takes: warms it up, runs it several times, takes the median.</summary>
internal static class Stopwatching
{
    private const int LeastRuns = 3;
    private const int MostRuns = 15;
    private static readonly TimeSpan WarmUp = TimeSpan.FromSeconds(1);
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(4);

    /// <summary>
    /// Runs something until it is warm (once at least, a second at most), then 3 to 15 times, fewer where it is slow.
    /// </summary>
    /// <returns>The median, and the last result.</returns>
    public static (TimeSpan Median, T Result) Of<T>(Func<T> work)
    {
        for (var warming = Stopwatch.StartNew(); ;)
        {
            work();
            if (warming.Elapsed >= WarmUp)
            {
                break;
            }
        }

        var times = new List<TimeSpan>();
        T result;
        var all = Stopwatch.StartNew();
        do
        {
            var one = Stopwatch.StartNew();
            result = work();
            times.Add(one.Elapsed);
        }
        while (times.Count < LeastRuns || (times.Count < MostRuns && all.Elapsed < Patience));

        return (Median(times), result);
    }

    /// <summary>The middle one of some times; of an even number the lower of the two in the middle.</summary>
    public static TimeSpan Median(IEnumerable<TimeSpan> times)
    {
        var sorted = times.Order().ToList();
        return sorted[(sorted.Count - 1) / 2];
    }
}
