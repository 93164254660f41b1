using EpisodePlanner.Scheduling;
using Google.OrTools.Sat;

namespace EpisodePlanner.Proving.Bench;

/// <summary>Waits and lags in the model: elapsed exactly; counted in hours never less than they take.</summary>
internal sealed class WaitRows(BenchModel bench)
{
    /// <summary>More steps than this are not told to the solver; the time then takes at least its own minutes.</summary>
    private const int MostSteps = 2000;

    private readonly CpModel model = bench.Model;

    public void Add(StageRow row)
    {
        if (row.About.WaitHours is { } counted)
        {
            After(counted, row.About.Minutes, row.Start, bench.Earliest.Starts[row.Index], row.Finish, row.Latest);
        }
        else
        {
            model.Add(row.Finish == row.Start + row.About.Minutes);
        }

        if (row.About.GluedTo >= 0)
        {
            model.Add(row.Start == bench[row.About.GluedTo].Finish);
        }
        else if (row.About.Begun)
        {
            model.Add(row.Start == 0);
        }

        // What takes no time may stand inside what others take; to the solver it may not.
        for (var mode = 0; mode < row.Modes.Count && row.About.Minutes > 0; mode++)
        {
            if (row.About.Modes[mode].Stations.Count > 0)
            {
                var interval = bench.Between(row.Start, row.Finish, row.Latest, row.Modes[mode]);
                foreach (var station in row.About.Modes[mode].Stations)
                {
                    bench.Stations.Take(station, interval);
                }
            }
        }
    }

    /// <summary>Something comes no sooner than so many minutes of some hours after something else.</summary>
    public void After(IntervalCalendar hours, int minutes, LinearExpr from, int earliest, LinearExpr to, int latest)
    {
        model.Add(to >= from + minutes);
        var steps = Ladder.Of(hours, minutes, earliest, latest).TakeWhile(step => step.Value <= latest).Take(MostSteps + 1).ToList();
        if (steps.Count > MostSteps)
        {
            return;
        }

        var chosen = new List<ILiteral>();
        foreach (var step in steps)
        {
            var isHere = model.NewBoolVar("step");
            chosen.Add(isHere);
            model.AddLinearConstraint(from, step.From, step.To).OnlyEnforceIf(isHere);
            model.Add(step.Rises ? to >= from + (step.Value - step.From) : to >= step.Value).OnlyEnforceIf(isHere);
        }

        model.AddExactlyOne(chosen);
    }
}
