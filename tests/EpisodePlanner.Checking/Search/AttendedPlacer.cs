using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Checking;

/// <summary>
/// Attended work goes on in every opening from its start that is long enough, and pauses between them.
/// </summary>
internal sealed class AttendedPlacer(Surroundings around, int stage) : Placer(around, stage)
{
    private readonly Dictionary<int, Stretch[]> windows = [];

    public override IEnumerable<SchedulePart[]> At(int start, int mode, IReadOnlyList<int>? finishes)
    {
        if (About.Minutes == 0)
            return [[new SchedulePart(PartKind.Work, start, start, mode)]];

        var parts = Work(start, mode);
        return parts is null || !StaysFree(mode, start, parts[^1].End) ? [] : [parts];
    }

    public override IEnumerable<int> Starts(int mode, int from, int to, IReadOnlyList<int> finishes)
    {
        if (About.Minutes == 0)
            return finishes.Where(f => f >= from && f <= to).Prepend(from);

        return Windows(mode).SelectMany(window =>
        {
            var first = Math.Max(window.Start, from);
            var last = Math.Min(window.End - Block(About.Minutes), to);
            return first > last ? [] : Starts(mode, new Stretch(first, last), finishes);
        });
    }

    private IEnumerable<int> Starts(int mode, Stretch firstToLast, IReadOnlyList<int> finishes)
    {
        yield return firstToLast.Start;
        foreach (var finish in finishes)
        {
            bool IsLate(int start) => Work(start, mode) is not { } parts || parts[^1].End >= finish;
            if (First(firstToLast.Start, firstToLast.End, IsLate) is { } start)
                yield return start;
        }
    }

    private SchedulePart[]? Work(int start, int mode)
    {
        var parts = new List<SchedulePart>();
        var left = About.Minutes;
        foreach (var window in Windows(mode))
        {
            var from = Math.Max(window.Start, start);
            if (window.End - from >= Block(left))
            {
                if (parts.Count == 0 && from != start)
                    return null;

                parts.Add(new SchedulePart(PartKind.Work, from, from + Math.Min(left, window.End - from), mode));
                left -= parts[^1].End - from;
            }

            if (left == 0)
                return [.. parts];
        }

        return null;
    }

    private Stretch[] Windows(int mode)
    {
        if (!windows.TryGetValue(mode, out var result))
        {
            var about = About.Modes[mode];
            var places = Sittings.Of(Around.Problem, about.Stations, StationKind.Place);
            var open = Around.Open(about.Stations, about.Limits).And(Around.AllFree(about.Stations));
            foreach (var person in Sittings.Of(Around.Problem, about.Stations, StationKind.Person))
                open = open.And(Around.People.Windows(person, places, About.Begun));

            windows.Add(mode, result = [.. open.Stretches]);
        }

        return result;
    }

    private bool StaysFree(int mode, int start, int finish) => !About.StaysSetUp || Around.AllFree(
        About.Modes[mode].Stations.Where(s => Around.Problem.Stations[s].Kind != StationKind.Person)).HasAll(start, finish);

    private int Block(int left) => Math.Max(1, Math.Min(Around.Relaxed.MinimumBlock ? 1 : About.MinimumBlock, left));
}
