using EpisodePlanner.Scheduling;
using Google.OrTools.Sat;

namespace EpisodePlanner.Proving.Bench;

/// <summary>
/// Attended work in the model. Work that may not pause is one stretch inside an opening. Of work that may, only the minutes
/// in each piece of time are told, not where in it they lie; that leaves more freedom than there is.
/// </summary>
internal sealed class AttendedRows(BenchModel bench)
{
    private readonly CpModel model = bench.Model;

    public void Add(StageRow row)
    {
        if (row.About.Minutes == 0)
        {
            model.Add(row.Finish == row.Start);
        }
        else if (row.About.MinimumBlock >= row.About.Minutes)
        {
            AddWhole(row);
        }
        else
        {
            AddPieces(row);
        }
    }

    private void AddWhole(StageRow row)
    {
        var minutes = row.About.Minutes;
        model.Add(row.Finish == row.Start + minutes);
        var everywhere = new List<BoolVar>();
        for (var mode = 0; mode < row.Modes.Count; mode++)
        {
            var stations = row.About.Modes[mode].Stations;
            foreach (var window in bench.OpenFor(row, mode, row.Latest).Spans().Where(window => window.Length >= minutes))
            {
                var isThere = model.NewBoolVar("there");
                everywhere.Add(isThere);
                model.AddImplication(isThere, row.Modes[mode]);
                model.AddLinearConstraint(row.Start, window.Start, window.End - minutes).OnlyEnforceIf(isThere);
                foreach (var station in stations)
                {
                    bench.Stations.Take(station, isThere, minutes, window);
                }
            }

            var interval = model.NewOptionalFixedSizeIntervalVar(row.Start, minutes, row.Modes[mode], "whole");
            foreach (var station in stations)
            {
                bench.Stations.Take(station, interval);
            }
        }

        model.AddExactlyOne(everywhere);
    }

    private void AddPieces(StageRow row)
    {
        var minutes = row.About.Minutes;
        model.Add(row.Finish >= row.Start + minutes);
        var all = new List<IntVar>();
        var (starts, finishes) = (new List<MinuteSpan>(), new List<MinuteSpan>());
        for (var mode = 0; mode < row.Modes.Count; mode++)
        {
            foreach (var window in bench.OpenFor(row, mode, bench.Limit).Spans())
            {
                // The first stretch is not the last one here, so it has a whole block.
                var last = IsCutOff(row, window) ? window.End : window.End - row.About.MinimumBlock + 1;
                starts.Add(new MinuteSpan(window.Start, Math.Max(window.Start, last)));
                finishes.Add(new MinuteSpan(window.Start + 1, window.End + 1));
                all.AddRange(AddWindow(row, mode, window));
            }

            Hold(row, mode);
        }

        if (!row.IsFirm)
        {
            all.Add(AddLater(row));
            starts.Add(new MinuteSpan(bench.Limit, row.Latest + 1));
            finishes.Add(new MinuteSpan(bench.Limit, row.Latest + 1));
        }

        model.Add(LinearExpr.Sum(all) == minutes);
        model.AddLinearExpressionInDomain(row.Start, Domains.Of(starts));
        model.AddLinearExpressionInDomain(row.Finish, Domains.Of(finishes));
    }

    /// <summary>What is done after the time that is looked at closely.</summary>
    private IntVar AddLater(StageRow row)
    {
        var (later, isAny) = (model.NewIntVar(0, row.About.Minutes, "later"), model.NewBoolVar("any later"));
        model.Add(later <= LinearExpr.Term(isAny, row.About.Minutes));
        model.Add(row.Finish >= later + bench.Limit).OnlyEnforceIf(isAny);
        return later;
    }

    private List<IntVar> AddWindow(StageRow row, int mode, MinuteSpan window)
    {
        var taken = new List<IntVar>();
        var isUsed = model.NewBoolVar("used");
        foreach (var piece in bench.Segments.Within(window))
        {
            taken.Add(AddPiece(row, mode, piece, isUsed));
        }

        model.AddImplication(isUsed, row.Modes[mode]);
        AddBlock(row, window, taken, isUsed);
        return taken;
    }

    private IntVar AddPiece(StageRow row, int mode, int piece, BoolVar isUsed)
    {
        var span = bench.Segments.All[piece];
        var most = Math.Min(span.Length, row.About.Minutes);
        var works = model.NewBoolVar("works");
        var minutes = most == 1 ? works : model.NewIntVar(0, most, "minutes");
        if (most > 1)
        {
            model.Add(minutes >= works);
            model.Add(minutes <= LinearExpr.Term(works, most));
        }

        model.AddImplication(works, isUsed);
        model.Add(row.Start + minutes <= span.End).OnlyEnforceIf(works);
        model.Add(row.Finish >= minutes + span.Start).OnlyEnforceIf(works);
        foreach (var station in row.About.Modes[mode].Stations)
        {
            if (!StaysTaken(row, station))
            {
                bench.Stations.Take(station, piece, row.Index, minutes);
            }
        }

        return minutes;
    }

    /// <summary>Every stretch has a whole block, but for the last one.</summary>
    private void AddBlock(StageRow row, MinuteSpan window, List<IntVar> taken, BoolVar isUsed)
    {
        var block = row.About.MinimumBlock;
        if (block <= 1 || IsCutOff(row, window))
        {
            return;
        }

        if (window.Length < block)
        {
            model.Add(row.Finish <= window.End).OnlyEnforceIf(isUsed);
            return;
        }

        var isLast = model.NewBoolVar("last");
        model.Add(row.Finish <= window.End).OnlyEnforceIf(isLast);
        model.Add(LinearExpr.Sum(taken) >= block).OnlyEnforceIf([isUsed, isLast.Not()]);
    }

    private void Hold(StageRow row, int mode)
    {
        var held = row.About.Modes[mode].Stations.Where(station => StaysTaken(row, station)).ToList();
        if (held.Count > 0)
        {
            var interval = bench.Between(row.Start, row.Finish, row.Latest, row.Modes[mode]);
            held.ForEach(station => bench.Stations.Take(station, interval));
        }
    }

    /// <summary>Whether an opening may go on after the time that is looked at.</summary>
    private bool IsCutOff(StageRow row, MinuteSpan window) => !row.IsFirm && window.End == bench.Limit;

    private bool StaysTaken(StageRow row, int station) =>
        row.About.StaysSetUp && bench.Problem.Stations[station].Kind != StationKind.Person;
}
