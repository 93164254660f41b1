using EpisodePlanner.Scheduling;
using Google.OrTools.Sat;

namespace EpisodePlanner.Proving.Bench;

/// <summary>
/// A relaxation of a bench problem in the solver's terms: every feasible schedule in which some targets are done by a
/// limit is an assignment of it, so that what no assignment reaches no schedule reaches.
/// </summary>
/// <remarks>
/// Relaxed are: all stages that the targets do not wait for; where in a piece of time work that pauses lies; setting up and
/// tidying, which only shorten openings; greatest lags, unless they are asked for.
/// </remarks>
internal sealed class BenchModel
{
    private const int PieceBudget = 400;
    private const int MostEnds = 20_000;

    private readonly Dictionary<int, StageRow> rows = [];
    private readonly IReadOnlySet<int> relaxed;

    /// <summary>Builds the relaxation.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="targets">The stages that must be done.</param>
    /// <param name="limit">They are finished by then.</param>
    /// <param name="rules">What is left out or asked for.</param>
    public BenchModel(BenchProblem problem, IReadOnlyCollection<int> targets, int limit, BoundRules rules)
    {
        (Problem, Limit, relaxed) = (problem, limit, rules.RelaxedStations);
        Hours = new WorkHours(problem);
        Needed = new NeededStages(problem, Hours, targets);
        Earliest = new EarliestDates(problem, Needed, Hours);
        var firm = Needed.FinishedWith(targets);
        IsImpossible = Needed.Stages.Any(stage => Earliest.Finishes[stage] > (firm.Contains(stage) ? limit : problem.Horizon));
        Segments = new Segments([], [], 0, 1);
        Stations = new StationRows(Model, Segments);
        if (!IsImpossible)
        {
            Segments = Cut();
            Stations = new StationRows(Model, Segments);
            Build(firm, rules);
        }
    }

    /// <summary>The problem.</summary>
    public BenchProblem Problem { get; }

    /// <summary>By then the targets are finished.</summary>
    public int Limit { get; }

    /// <summary>Whether dates and links alone leave no schedule.</summary>
    public bool IsImpossible { get; }

    public CpModel Model { get; } = new();

    public WorkHours Hours { get; }

    public NeededStages Needed { get; }

    public EarliestDates Earliest { get; }

    public Segments Segments { get; }

    public StationRows Stations { get; }

    /// <summary>A stage that is needed.</summary>
    public StageRow this[int stage] => rows[stage];

    /// <summary>The hours of attended work in a mode that count for a stage, until a minute.</summary>
    public IntervalCalendar OpenFor(StageRow row, int mode, int until) =>
        Hours.OfWork(row.About.Modes[mode]).Clip(Earliest.Starts[row.Index], until);

    /// <summary>The time from a moment to another, if something holds.</summary>
    public IntervalVar Between(IntVar start, IntVar end, int most, BoolVar holds) =>
        Model.NewOptionalIntervalVar(start, Model.NewIntVar(0, most, "long"), end, holds, "held");

    /// <summary>An end by which some stages are finished leaves room for what they do last.</summary>
    public void EndAfter(LinearExpr end, IEnumerable<int> stages) => Stations.EndAfter(end, Needed.FinishedWith(stages), relaxed);

    private Segments Cut()
    {
        var open = Needed.Stages.Select(stage => Problem.Stages[stage])
            .Where(stage => stage is { Kind: StageKind.Attended, Minutes: > 0 })
            .SelectMany(stage => stage.Modes.Select(Hours.OfWork));
        return new Segments([.. open], Needed.Stages.Select(stage => Earliest.Starts[stage]), Limit, PieceBudget);
    }

    private void Build(IReadOnlySet<int> firm, BoundRules rules)
    {
        foreach (var stage in Needed.Stages)
        {
            rows.Add(stage, NewRow(stage, firm.Contains(stage)));
        }

        var (attended, runs, waits) = (new AttendedRows(this), new RunRows(this), new WaitRows(this));
        foreach (var row in Needed.Stages.Select(stage => rows[stage]))
        {
            switch (row.About.Kind)
            {
                case StageKind.Attended:
                    attended.Add(row);
                    break;
                case StageKind.Run:
                    runs.Add(row);
                    break;
                default:
                    waits.Add(row);
                    break;
            }
        }

        foreach (var link in Needed.Links)
        {
            AddLink(link, waits, rules);
        }

        Stations.Post(relaxed);
        AddEnds();
    }

    private StageRow NewRow(int stage, bool isFirm)
    {
        var about = Problem.Stages[stage];
        var latest = isFirm ? Limit : Problem.Horizon;
        var modes = about.Modes.Select((_, i) => Model.NewBoolVar($"m{stage}.{i}")).ToList();
        Model.AddExactlyOne(modes);
        return new StageRow(
            stage,
            about,
            Model.NewIntVar(Earliest.Starts[stage], latest, $"s{stage}"),
            Model.NewIntVar(Earliest.Finishes[stage], latest, $"f{stage}"),
            modes,
            latest,
            isFirm);
    }

    private void AddLink(BenchLink link, WaitRows waits, BoundRules rules)
    {
        var (leavesFinish, holdsStart) = (link.Kind is LinkKind.After or LinkKind.TogetherFinish, link.Kind is LinkKind.After or LinkKind.TogetherStart);
        var from = leavesFinish ? rows[link.From].Finish : rows[link.From].Start;
        var to = holdsStart ? rows[link.To].Start : rows[link.To].Finish;
        if (link.LagHours is { } counted)
        {
            var earliest = (leavesFinish ? Earliest.Finishes : Earliest.Starts)[link.From];
            waits.After(counted, link.Lag, from, earliest, to, rows[link.To].Latest);
        }
        else
        {
            Model.Add(to >= from + link.Lag);
        }

        if (rules.KeepsGreatestLags && link.AtMost is { } most)
        {
            Model.Add(to <= from + most);
        }
    }

    /// <summary>A stage that waits for several starts only when all they do in a piece of time has had its room.</summary>
    private void AddEnds()
    {
        var several = Needed.Stages.Where(stage => Needed.Into(stage).Count() > 1).ToList();
        if ((long)several.Count * Segments.All.Count <= MostEnds)
        {
            several.ForEach(stage => Stations.EndAfter(rows[stage].Start, Needed.FinishedBefore(stage), relaxed));
        }
    }
}
