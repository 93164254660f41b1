using EpisodePlanner.Scheduling.Engine;

namespace EpisodePlanner.Scheduling.Packed;

/// <summary>
/// Draws lists in which every activity follows those it waits for. Of the activities that could be next, each is drawn
/// in proportion to its regret: by how much its latest finish lies before the last of theirs, plus one.
/// </summary>
/// <remarks>
/// A. Drexl, "Scheduling of project networks by job assignment", Management Science 37 (1991); the rule of least latest
/// finish: E. W. Davis and J. H. Patterson, Management Science 21 (1975).
/// </remarks>
internal sealed class RegretSampler
{
    private readonly PackedColumns columns;
    private readonly PackedColumns mirror;
    private readonly int[] late;
    private readonly SplitMix dice;
    private readonly int[] waiting;
    private readonly int[] ready;
    private int readyCount;

    /// <param name="columns">The problem.</param>
    /// <param name="mirror">The problem in reversed time.</param>
    /// <param name="late">By activity: the latest finish.</param>
    /// <param name="dice">Where chance comes from.</param>
    public RegretSampler(PackedColumns columns, PackedColumns mirror, int[] late, SplitMix dice)
    {
        (this.columns, this.mirror, this.late, this.dice) = (columns, mirror, late, dice);
        waiting = new int[columns.Count];
        ready = new int[columns.Count];
    }

    /// <summary>Writes the place of each activity in a drawn list.</summary>
    public void Draw(Span<int> places)
    {
        Reset();
        for (var place = 0; place < places.Length; place++)
        {
            var chosen = Choose();
            var activity = ready[chosen];
            ready[chosen] = ready[--readyCount];
            places[activity] = place;
            Release(activity);
        }
    }

    private void Reset()
    {
        readyCount = 0;
        for (var i = 0; i < columns.Count; i++)
        {
            waiting[i] = columns.WaitsForCount(i);
            if (waiting[i] == 0)
            {
                ready[readyCount++] = i;
            }
        }
    }

    private int Choose()
    {
        var last = int.MinValue;
        for (var k = 0; k < readyCount; k++)
        {
            last = Math.Max(last, late[ready[k]]);
        }

        var sum = 0L;
        for (var k = 0; k < readyCount; k++)
        {
            sum += last - late[ready[k]] + 1;
        }

        var drawn = dice.Below(sum);
        var chosen = 0;
        for (; drawn >= last - late[ready[chosen]] + 1; chosen++)
        {
            drawn -= last - late[ready[chosen]] + 1;
        }

        return chosen;
    }

    /// <summary>What waits for an activity is what it waits for in reversed time.</summary>
    private void Release(int activity)
    {
        var item = mirror.Items[columns.Count - 1 - activity];
        for (var k = item.FirstWait; k < item.EndWait && mirror.WaitsFor[k] < columns.Count; k++)
        {
            var next = columns.Count - 1 - mirror.WaitsFor[k];
            if (--waiting[next] == 0)
            {
                ready[readyCount++] = next;
            }
        }
    }
}
