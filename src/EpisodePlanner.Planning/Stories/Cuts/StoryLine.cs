namespace EpisodePlanner.Planning;

/// <summary>What is still to be told of a series, in story order, and where it may be cut.</summary>
internal sealed class StoryLine
{
    private const long Fewer = 10_000;
    private readonly Series series;
    private readonly long[] leastFrom;

    /// <summary>A line.</summary>
    /// <param name="series">The series.</param>
    /// <param name="units">What is still to be told, in story order.</param>
    public StoryLine(Series series, IReadOnlyList<StoryUnit> units)
    {
        (this.series, Units) = (series, units);
        leastFrom = Misfits();
        Now = new StoryCuts([.. Enumerable.Range(0, units.Count).Select(IsCutNow)]);
    }

    /// <summary>The series.</summary>
    public Series Series => series;

    /// <summary>What is still to be told, in story order.</summary>
    public IReadOnlyList<StoryUnit> Units { get; }

    /// <summary>Where the maker cuts it now.</summary>
    public StoryCuts Now { get; }

    /// <summary>The least that episodes must be out of bounds altogether, in tenths of minutes; 0 where some cut meets them all.</summary>
    public long LeastMisfit => LeastMisfitFrom(0);

    /// <summary>The least that the episodes from a unit on must be out of bounds; 0 past the last.</summary>
    public long LeastMisfitFrom(int unit) => leastFrom[unit];

    /// <summary>Whether an episode may end with a unit.</summary>
    public bool MayEndAfter(int unit) => unit == Units.Count - 1 || IsFixed(unit) || IsFixed(unit + 1) || Units[unit].MayEnd;

    /// <summary>Whether an episode ends with a unit whatever is chosen.</summary>
    public bool MustEndAfter(int unit) => unit == Units.Count - 1 || IsFixed(unit) || IsFixed(unit + 1);

    /// <summary>Whether an episode may show just these units, apart from bounds.</summary>
    public bool IsEpisode(int first, int last)
    {
        for (var unit = first; unit < last; unit++)
        {
            if (MustEndAfter(unit))
            {
                return false;
            }
        }

        return MayEndAfter(last);
    }

    /// <summary>By how much an episode of these units is out of the series' bounds, in tenths of minutes on screen.</summary>
    public long Misfit(int first, int last)
    {
        if (IsFixed(first))
        {
            return 0;
        }

        var count = last - first + 1;
        var misfit = Fewer * Math.Max(0, Math.Min(series.FewestMilestones ?? 1, RunLength(first)) - count);
        if (series.ScreenMinutes is { } bounds)
        {
            var minutes = 0m;
            for (var unit = first; unit <= last; unit++)
            {
                minutes += Units[unit].ScreenMinutes;
            }

            misfit += (long)(Math.Max(0, Math.Max(bounds.Least - minutes, minutes - bounds.Most)) * 10);
        }

        return misfit;
    }

    /// <summary>The misfit of all episodes under some cuts.</summary>
    public long Misfit(StoryCuts cuts) => cuts.Segments().Sum(segment => Misfit(segment.First, segment.Last));

    /// <summary>Whether cuts are as good as bounds, payoffs and what stays allow.</summary>
    public bool Allows(StoryCuts cuts) =>
        cuts.Segments().All(segment => IsEpisode(segment.First, segment.Last)) && Misfit(cuts) == LeastMisfit;

    private bool IsFixed(int unit) => unit < Units.Count && Units[unit].Fixed is not null;

    private bool IsCutNow(int unit)
    {
        if (MustEndAfter(unit))
        {
            return true;
        }

        var (here, next) = (Units[unit].Shown, Units[unit + 1].Shown);
        return here?.Id != next?.Id;
    }

    /// <summary>How many free units stand together where this one stands.</summary>
    private int RunLength(int unit)
    {
        var (first, last) = (unit, unit);
        while (first > 0 && !IsFixed(first - 1))
        {
            first--;
        }

        while (last + 1 < Units.Count && !IsFixed(last + 1))
        {
            last++;
        }

        return last - first + 1;
    }

    private long[] Misfits()
    {
        var least = new long[Units.Count + 1];
        for (var first = Units.Count - 1; first >= 0; first--)
        {
            least[first] = long.MaxValue / 4;
            for (var last = first; last < Units.Count; last++)
            {
                if (IsEpisode(first, last))
                {
                    least[first] = Math.Min(least[first], Misfit(first, last) + least[last + 1]);
                }
            }
        }

        return least;
    }
}
