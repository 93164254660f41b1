using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Planning;

/// <summary>
/// What a bench schedule minimises: lateness of told dates, needed-by dates and pinned slots; then the weight of
/// silences beyond promises, where what is ready may be held back; then moves against the accepted starts of the next seven days; then the end of the work.
/// </summary>
internal sealed class PlanObjective : IDeadlineObjective
{
    private readonly EpisodeTable table;
    private readonly SlotSweep sweep;
    private readonly ObjectiveInput input;
    private readonly int[][] months;
    private readonly int[][] made;
    private readonly int[][] episodes;
    private readonly (int Stage, int By)[] neededBy;
    private readonly (int Stage, int Start)[] acceptedStarts;
    private readonly int[] planned;
    private readonly int[] channel;

    public PlanObjective(EpisodeTable table, SlotSweep sweep, ObjectiveInput input)
    {
        (this.table, this.sweep, this.input) = (table, sweep, input);
        made = [.. table.Series.Select(s => s.Uploads.Select(SilencePenalty.DayNumber).ToArray())];
        months = [.. table.Series.Select(s => s.Promise.UploadsPerMonth is not null && s.Uploads.Count > 0
            ? SilencePenalty.Months(s.Uploads[0], input.LastDay)
            : [])];
        episodes = [.. table.Series.Select(s => s.Episodes.ToArray())];
        (neededBy, acceptedStarts) = ([.. input.NeededBy], [.. input.AcceptedStarts]);
        planned = new int[table.Episodes.Count + made.Select(m => m.Length).DefaultIfEmpty(0).Max()];
        channel = new int[table.Episodes.Count];
    }

    public int Parts => 4;

    public void Evaluate(ReadOnlySpan<int> starts, ReadOnlySpan<int> finishes, Span<long> row)
    {
        sweep.Run(finishes);
        row[0] = Lateness(finishes);
        row[1] = Silence();
        row[2] = Moves(starts);
        row[3] = End(finishes);
    }

    /// <summary>
    /// What makes one date alone later than all of them are together. Silences tell no deadlines: they depend on when all
    /// episodes are out.
    /// </summary>
    public void LatestFinishes(ReadOnlySpan<long> row, Span<int> latest)
    {
        latest.Fill(int.MaxValue);
        foreach (var (stage, by) in neededBy)
        {
            Limit(latest, stage, by + row[0], 0);
        }

        foreach (var episode in table.Episodes)
        {
            if (episode.ToldBy >= 0)
            {
                Limit(latest, episode, episode.ToldBy - 1 + row[0]);
            }

            if (episode.PinnedOpening >= 0)
            {
                Limit(latest, episode, input.PinnedUntil(episode) + row[0]);
            }
        }
    }

    private void Limit(Span<int> latest, EpisodeRow episode, long publicBy)
    {
        Limit(latest, episode.ReadyStage, publicBy, episode.Lead);
        Limit(latest, episode.FixesStage, publicBy, 0);
    }

    /// <summary>From the horizon on nothing gets later: what has no date counts as there.</summary>
    private void Limit(Span<int> latest, int stage, long by, int lead)
    {
        if (stage >= 0 && by < input.Horizon)
        {
            latest[stage] = Math.Min(latest[stage], (int)by - lead);
        }
    }

    private long Lateness(ReadOnlySpan<int> finishes)
    {
        var late = 0L;
        foreach (var (stage, by) in neededBy)
        {
            late += Late(finishes[stage], by);
        }

        for (var e = 0; e < table.Episodes.Count; e++)
        {
            var episode = table.Episodes[e];
            late += episode.ToldBy < 0 ? 0 : Late(sweep.Minutes[e], episode.ToldBy - 1);
            late += episode.PinnedOpening < 0 ? 0 : Late(sweep.Minutes[e], input.PinnedUntil(episode));
        }

        return late;
    }

    private int Late(int minute, int by) => Math.Max(0, (minute < 0 ? input.Horizon : minute) - by);

    private long Silence()
    {
        var total = 0L;
        var all = 0;
        for (var s = 0; s < table.Series.Count; s++)
        {
            var count = 0;
            foreach (var episode in episodes[s])
            {
                if (sweep.Days[episode] >= 0)
                {
                    planned[count++] = sweep.Days[episode];
                }
            }

            planned.AsSpan(0, count).CopyTo(channel.AsSpan(all));
            all += count;
            total += OfSeries(s, count);
        }

        channel.AsSpan(0, all).Sort();
        return total + HeldBack.Weight(input.ChannelSilentFrom, channel.AsSpan(0, all), input.ChannelPromise, input.LastDayNumber);
    }

    private long OfSeries(int s, int count)
    {
        var series = table.Series[s];
        if (series.Promise.UploadsPerMonth is not { } each)
        {
            return HeldBack.Weight(
                series.SilentFrom, planned.AsSpan(0, count), series.Promise.LongestSilenceDays!.Value, input.LastDayNumber);
        }

        var uploads = planned.AsSpan(0, made[s].Length + count);
        planned.AsSpan(0, count).CopyTo(uploads[made[s].Length..]);
        made[s].CopyTo(uploads);
        return SilencePenalty.OfMonths(uploads, each, months[s], input.LastDayNumber);
    }

    private long Moves(ReadOnlySpan<int> starts)
    {
        var moves = 0L;
        foreach (var (stage, start) in acceptedStarts)
        {
            moves += starts[stage] == start ? 0 : 1;
        }

        return moves;
    }

    private long End(ReadOnlySpan<int> finishes)
    {
        var (end, unplaced) = (0L, 0L);
        foreach (var finish in finishes)
        {
            end = Math.Max(end, finish);
            unplaced += finish < 0 ? 1 : 0;
        }

        return unplaced > 0 ? input.Horizon + unplaced : end;
    }
}
