using EpisodePlanner.Scheduling.Engine;

namespace EpisodePlanner.Scheduling.Lists;

/// <summary>
/// Makes a list from two schedules: that of the first, where inside a window of time the activities stand in the order
/// of the second. Of some windows drawn at random that one is taken in which the second schedule uses the stations most
/// above the first: there it has something to give.
/// </summary>
/// <remarks>
/// Both orders keep every link, and so does the mixture, since what the first schedule finishes before the window stays
/// before it. The idea that good parts of a schedule are those in which stations are busy is that of the peak crossover
/// of V. Valls, F. Ballestín and S. Quintanilla, "A hybrid genetic algorithm for the resource-constrained project
/// scheduling problem", EJOR 185 (2008), and of the two-point crossover of D. Debels and M. Vanhoucke, "A
/// decomposition-based genetic algorithm for the RCPSP", Operations Research 55 (2007); both keep a peak of one parent
/// and fill the rest from the other. Choosing by the difference of both parents was found by measuring.
/// </remarks>
internal sealed class WindowCrossover
{
    private const int WindowsDrawn = 4;

    /// <summary>A window is at least and at most so many parts in a hundred of the first schedule.</summary>
    private const int LeastPercent = 30;
    private const int MostPercent = 70;

    /// <summary>Use of stations is told in these parts of all capacity.</summary>
    public const int Whole = 1 << 16;

    private readonly int[] durations;
    private readonly int[] use;
    private readonly SplitMix dice;

    /// <param name="durations">By item: how long it takes stations.</param>
    /// <param name="use">By item: its mean use of all stations, in parts of <see cref="Whole"/>.</param>
    /// <param name="dice">Where chance comes from.</param>
    public WindowCrossover(int[] durations, int[] use, SplitMix dice)
    {
        (this.durations, this.use, this.dice) = (durations, use, dice);
    }

    /// <summary>Writes the keys of the list, to be sorted in ascending order of finish.</summary>
    /// <param name="first">When activities finish in the schedule that is changed.</param>
    /// <param name="firstEnd">Its end.</param>
    /// <param name="second">When they finish in the schedule that gives its order.</param>
    /// <param name="secondEnd">Its end.</param>
    /// <param name="keys">By activity.</param>
    public void Write(ReadOnlySpan<int> first, int firstEnd, ReadOnlySpan<int> second, int secondEnd, Span<int> keys)
    {
        var (from, to) = Window(first, firstEnd, second, secondEnd);
        var apart = Math.Max(firstEnd, secondEnd) + 1;
        for (var i = 0; i < keys.Length; i++)
        {
            keys[i] = first[i] <= from ? first[i] - apart : first[i] <= to ? second[i] : first[i] + apart;
        }
    }

    private (int From, int To) Window(ReadOnlySpan<int> first, int firstEnd, ReadOnlySpan<int> second, int secondEnd)
    {
        var percent = LeastPercent + dice.Below(MostPercent - LeastPercent + 1);
        var length = Math.Min(firstEnd, Math.Max(2, (int)((long)firstEnd * percent / 100)));
        var (best, bestFrom) = (double.NegativeInfinity, 0);
        for (var drawn = 0; drawn < WindowsDrawn; drawn++)
        {
            var from = dice.Below(firstEnd - length + 1);
            var (start, end) = (Scaled(from, firstEnd, secondEnd), Scaled(from + length, firstEnd, secondEnd));
            var gain = Used(second, start, end) - Used(first, from, from + length);
            (best, bestFrom) = gain > best ? (gain, from) : (best, bestFrom);
        }

        return (bestFrom, bestFrom + length);
    }

    private static int Scaled(int moment, int end, int otherEnd) => end == 0 ? 0 : (int)((long)moment * otherEnd / end);

    /// <summary>The mean use of stations in a window.</summary>
    private double Used(ReadOnlySpan<int> finishes, int from, int to)
    {
        unchecked
        {
            // Durations add up to at most 2^28 and a use is at most 2^16, so the sum stays below 2^44.
            var sum = 0L;
            for (var i = 0; i < finishes.Length; i++)
            {
                var inside = Math.Min(to, finishes[i]) - Math.Max(from, finishes[i] - durations[i]);
                sum += Math.Max(0, inside) * (long)use[i];
            }

            return sum / (double)Math.Max(1, to - from);
        }
    }
}
