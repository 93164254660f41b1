using EpisodePlanner.Planning;
using EpisodePlanner.Proving.Bench;
using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Proving.Publishing;

/// <summary>Rules windows out without a search: by hours and links, and by the load of stations.</summary>
internal sealed class WindowTests
{
    private readonly EpisodeLine line;
    private readonly BenchProblem problem;
    private readonly WorkHours hours;
    private readonly NeededStages needed;
    private readonly EarliestDates earliest;
    private readonly StationLoads loads;

    public WindowTests(EpisodeLine line)
    {
        this.line = line;
        problem = line.Question.Known.Problem;
        hours = new WorkHours(problem);
        needed = new NeededStages(problem, hours, line.Stages);
        earliest = new EarliestDates(problem, needed, hours);
        loads = new StationLoads(problem, hours, needed, earliest);
    }

    /// <summary>When the episode is available at the earliest as far as hours and links say it.</summary>
    public int AvailableFrom => new[]
    {
        line.Last.ReadyStage < 0 ? line.Last.Lead : Later(earliest.Finishes[line.Last.ReadyStage], line.Last.Lead),
        line.Last.FixesStage < 0 ? 0 : earliest.Finishes[line.Last.FixesStage],
    }.Max();

    /// <summary>The stations that the work takes.</summary>
    public IReadOnlyList<int> Stations => [.. needed.Stages.SelectMany(stage => problem.Stages[stage].Modes)
        .SelectMany(mode => mode.Machine >= 0 ? mode.Stations.Append(mode.Machine) : mode.Stations)
        .Distinct()
        .OrderByDescending(station => problem.Stations[station].Kind)
        .ThenBy(station => station)];

    /// <summary>What rules a window out; null where nothing here does.</summary>
    public PublishingBinding? RulesOut(int window)
    {
        if (!line.Admits(window))
        {
            return new PublishingBinding.Windows();
        }

        var latest = new LatestDates(problem, hours, needed, line, window).Finishes;
        var late = needed.Order.LastOrDefault(stage => earliest.Finishes[stage] > latest[stage], -1);
        if (late >= 0)
        {
            return new PublishingBinding.Chain(ChainTo(late));
        }

        return line.AvailableBy(window) < line.Last.Lead && line.Last.ReadyStage < 0
            ? new PublishingBinding.Windows()
            : loads.TooMuch(latest);
    }

    /// <summary>The chain of links that leads to the last stage of the episode.</summary>
    public PublishingBinding.Chain Chain() => new(ChainTo(line.Stages.MaxBy(stage => earliest.Finishes[stage])));

    private ValueList<int> ChainTo(int last)
    {
        var chain = new List<int>();
        for (var stage = last; stage >= 0; stage = Driver(stage))
        {
            chain.Add(stage);
        }

        chain.Reverse();
        return chain.ToValueList();
    }

    /// <summary>The stage that holds another the longest; −1 where a date or the present does.</summary>
    private int Driver(int stage)
    {
        var about = problem.Stages[stage];
        var (driver, least) = (-1, (long)about.NotBefore);
        foreach (var link in needed.Into(stage))
        {
            var from = link.Kind is LinkKind.After or LinkKind.TogetherFinish ? earliest.Finishes[link.From] : earliest.Starts[link.From];
            var moment = from == EarliestDates.Never ? from : EarliestDates.AfterLag(link, from);
            if (moment > least)
            {
                (driver, least) = (link.From, moment);
            }
        }

        return driver;
    }

    private static int Later(int minute, int by) => minute == EarliestDates.Never ? minute : minute + by;
}
