using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Checking;

/// <summary>A wait starts at its glue, or wherever its places are free for all of it.</summary>
internal sealed class WaitPlacer(Surroundings around, int stage) : Placer(around, stage)
{
    public override IEnumerable<SchedulePart[]> At(int start, int mode, IReadOnlyList<int>? finishes)
    {
        var fits = IsAllowed(start)
            && Around.WaitEnd(About, start) is { } end
            && Around.AllFree(About.Modes[mode].Stations).HasAll(start, end);
        return fits ? [[new SchedulePart(PartKind.Wait, start, Around.WaitEnd(About, start)!.Value, mode)]] : [];
    }

    public override IEnumerable<int> Starts(int mode, int from, int to, IReadOnlyList<int> finishes)
    {
        var freed = Around.AllFree(About.Modes[mode].Stations).Stretches.Select(s => s.Start);
        var late = finishes.Select(f => First(from, to, s => Around.WaitEnd(About, s) is not { } end || end >= f)).OfType<int>();
        return freed.Concat(late).Where(s => s >= from && s <= to).Prepend(from).Distinct();
    }

    private bool IsAllowed(int start)
    {
        if (About.GluedTo != -1)
            return Around.Placed(About.GluedTo) is [.., var last] && last.End == start;

        return !About.Begun || start == 0;
    }
}
