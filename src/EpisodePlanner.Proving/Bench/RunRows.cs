using EpisodePlanner.Scheduling;
using Google.OrTools.Sat;

namespace EpisodePlanner.Proving.Bench;

/// <summary>Runs in the model: exactly as they are, but for the setting up of others around a load or unload by hand.</summary>
internal sealed class RunRows(BenchModel bench)
{
    private readonly CpModel model = bench.Model;

    public void Add(StageRow row)
    {
        var about = row.About;
        var unload = model.NewIntVar(0, row.Latest, "unload");
        var load = about.Begun ? 0 : about.LoadMinutes;
        var ended = row.Start + (load + about.Minutes);
        model.Add(row.Finish == unload + about.UnloadMinutes);
        model.Add(unload >= ended);
        if (about.LookAt is { } times)
        {
            var noticed = model.NewIntVarFromDomain(Domains.Of(times, 0, row.Latest), "noticed");
            model.Add(noticed >= ended);
            model.Add(unload >= noticed);
        }

        AddStarts(row, load);
        AddUnload(row, unload);

        // A hold of no time may stand inside what others take; to the solver it may not.
        var takesTime = load + about.Minutes + about.UnloadMinutes > 0;
        for (var mode = 0; mode < row.Modes.Count && takesTime; mode++)
        {
            bench.Stations.Take(about.Modes[mode].Machine, bench.Between(row.Start, row.Finish, row.Latest, row.Modes[mode]));
        }
    }

    private void AddStarts(StageRow row, int load)
    {
        if (row.About.Begun)
        {
            model.Add(row.Start == 0);
            return;
        }

        for (var mode = 0; mode < row.Modes.Count; mode++)
        {
            var choice = row.About.Modes[mode];
            var starts = bench.Hours.StartsOfRun(row.About, choice);
            model.AddLinearExpressionInDomain(row.Start, Domains.Of(starts, bench.Earliest.Starts[row.Index], row.Latest))
                .OnlyEnforceIf(row.Modes[mode]);
            if (row.About.LoadTakesHands)
            {
                TakeHands(row.Start, load, choice, row.Modes[mode]);
            }
        }
    }

    /// <summary>Any mode with the machine of the run may do the unload.</summary>
    private void AddUnload(StageRow row, IntVar unload)
    {
        if (!row.About.UnloadTakesHands)
        {
            model.AddLinearExpressionInDomain(
                unload, Domains.Of(bench.Hours.StartsOfUnload(row.About, row.About.Modes[0]), 0, row.Latest));
            return;
        }

        var chosen = row.Modes.Select(_ => model.NewBoolVar("unloads")).ToList();
        model.AddExactlyOne(chosen);
        for (var mode = 0; mode < chosen.Count; mode++)
        {
            var choice = row.About.Modes[mode];
            var same = Enumerable.Range(0, chosen.Count).Where(other => row.About.Modes[other].Machine == choice.Machine);
            model.AddBoolOr(same.Select(other => (ILiteral)row.Modes[other]).Append(chosen[mode].Not()));
            model.AddLinearExpressionInDomain(unload, Domains.Of(bench.Hours.StartsOfUnload(row.About, choice), 0, row.Latest))
                .OnlyEnforceIf(chosen[mode]);
            TakeHands(unload, row.About.UnloadMinutes, choice, chosen[mode]);
        }
    }

    private void TakeHands(IntVar start, int minutes, StageMode choice, BoolVar isChosen)
    {
        var interval = model.NewOptionalFixedSizeIntervalVar(start, minutes, isChosen, "hands");
        foreach (var station in choice.Stations)
        {
            bench.Stations.Take(station, interval);
        }
    }
}
