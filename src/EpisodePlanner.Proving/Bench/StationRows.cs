using EpisodePlanner.Scheduling;
using Google.OrTools.Sat;

namespace EpisodePlanner.Proving.Bench;

/// <summary>What stages take of each station: minutes of a piece of time, or the station from one moment to another.</summary>
/// <param name="model">The model.</param>
/// <param name="segments">The pieces.</param>
internal sealed class StationRows(CpModel model, Segments segments)
{
    private readonly Dictionary<(int Station, int Piece), List<(int Stage, IntVar Minutes)>> pieces = [];
    private readonly Dictionary<int, List<IntervalVar>> intervals = [];
    private readonly Dictionary<int, List<(BoolVar IsThere, int Minutes, MinuteSpan Window)>> windows = [];
    private readonly Dictionary<int, List<MinuteSpan>> open = [];

    /// <summary>A stage takes some minutes of a piece.</summary>
    public void Take(int station, int piece, int stage, IntVar minutes)
    {
        ListOf(pieces, (station, piece)).Add((stage, minutes));
        ListOf(open, station).Add(segments.All[piece]);
    }

    /// <summary>A station is taken from a moment to another.</summary>
    public void Take(int station, IntervalVar interval) => ListOf(intervals, station).Add(interval);

    /// <summary>Somewhere in a window a station is taken for some minutes, if at all.</summary>
    public void Take(int station, BoolVar isThere, int minutes, MinuteSpan window)
    {
        ListOf(windows, station).Add((isThere, minutes, window));
        ListOf(open, station).Add(window);
    }

    /// <summary>No station is taken twice; those that are relaxed are not looked at.</summary>
    public void Post(IReadOnlySet<int> relaxed)
    {
        foreach (var station in open.Keys.Union(intervals.Keys).Where(station => !relaxed.Contains(station)).Order())
        {
            PostPieces(station);
            PostWindows(station);
            if (intervals.TryGetValue(station, out var taken) && taken.Count > 0)
            {
                model.AddNoOverlap(taken.Concat(FullPieces(station)));
            }
        }
    }

    /// <summary>
    /// Where some stages work in a piece and all are finished by an end, the end leaves room for all they do in it.
    /// </summary>
    public void EndAfter(LinearExpr end, IReadOnlySet<int> stages, IReadOnlySet<int> relaxed)
    {
        foreach (var ((station, piece), taken) in pieces.Where(pair => !relaxed.Contains(pair.Key.Station)))
        {
            var counted = taken.Where(x => stages.Contains(x.Stage)).Select(x => x.Minutes).ToList();
            if (counted.Count > 1)
            {
                var any = model.NewBoolVar("any");
                var total = LinearExpr.Sum(counted);
                model.Add(total <= segments.All[piece].Length * any);
                model.Add(end >= segments.All[piece].Start + total).OnlyEnforceIf(any);
            }
        }
    }

    private void PostPieces(int station)
    {
        foreach (var ((_, piece), taken) in pieces.Where(pair => pair.Key.Station == station && pair.Value.Count > 1))
        {
            model.Add(LinearExpr.Sum(taken.Select(x => x.Minutes)) <= segments.All[piece].Length);
        }
    }

    /// <summary>In each opening of all the work that needs a station, minutes of pieces and of whole stretches have room.</summary>
    private void PostWindows(int station)
    {
        if (!windows.TryGetValue(station, out var whole))
        {
            return;
        }

        foreach (var span in IntervalCalendar.FromSpans(open[station]).Spans())
        {
            var inside = whole.Where(x => x.Window.Start >= span.Start && x.Window.End <= span.End)
                .Select(x => LinearExpr.Term(x.IsThere, x.Minutes));
            var parts = segments.Within(span).SelectMany(piece => pieces.GetValueOrDefault((station, piece)) ?? [])
                .Select(x => (LinearExpr)x.Minutes);
            model.Add(LinearExpr.Sum(inside.Concat(parts)) <= span.Length);
        }
    }

    /// <summary>Pieces that are wholly taken, as intervals.</summary>
    private IEnumerable<IntervalVar> FullPieces(int station)
    {
        foreach (var ((_, piece), taken) in pieces.Where(pair => pair.Key.Station == station))
        {
            var (span, full) = (segments.All[piece], model.NewBoolVar("full"));
            model.Add(LinearExpr.Sum(taken.Select(x => x.Minutes)) <= span.Length - 1 + LinearExpr.Affine(full, 1, 0));
            yield return model.NewOptionalFixedSizeIntervalVar(model.NewConstant(span.Start), span.Length, full, "full");
        }
    }

    private static List<TValue> ListOf<TKey, TValue>(Dictionary<TKey, List<TValue>> lists, TKey key)
        where TKey : notnull
    {
        if (!lists.TryGetValue(key, out var list))
        {
            lists.Add(key, list = []);
        }

        return list;
    }
}
