namespace EpisodePlanner.Scheduling.Engine;

/// <summary>
/// Remembers, while one schedule is made, between which minutes a mode has no opening of some length. What is taken is
/// never given back, and work fits into an opening only with its own setting up and tidying, so what it leaves of the
/// opening is a part of it: that stays true, and a long row of full evenings need not be looked at again.
/// </summary>
internal sealed class FullStretches
{
    private readonly Dictionary<(CompiledMode Mode, int Need), (int From, int To)> known = [];

    public void Clear() => known.Clear();

    /// <summary>The first minute at or after one at which an opening might begin.</summary>
    public int Skip(CompiledMode mode, int need, int minute) =>
        known.TryGetValue((mode, need), out var full) && full.From <= minute && minute < full.To ? full.To : minute;

    /// <summary>Learns that from a minute to another no opening begins.</summary>
    public void Learn(CompiledMode mode, int need, int from, int to)
    {
        if (!known.TryGetValue((mode, need), out var full))
        {
            known.Add((mode, need), (from, to));
            return;
        }

        var meets = from <= full.To && full.From <= to;
        var joined = (From: Math.Min(from, full.From), To: Math.Max(to, full.To));
        if (meets || to - from > full.To - full.From)
        {
            known[(mode, need)] = meets ? joined : (from, to);
        }
    }
}
