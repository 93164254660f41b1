using EpisodePlanner.Scheduling.Engine;

namespace EpisodePlanner.Scheduling;

/// <summary>What can keep a stage from ever being done.</summary>
public enum ImpossibleKind
{
    /// <summary>The hours of a station.</summary>
    Hours,

    /// <summary>The hours of a limit.</summary>
    Limit,

    /// <summary>That somebody must be present.</summary>
    Presence,

    /// <summary>The date before which a stage may not start.</summary>
    Date,

    /// <summary>The greatest lag of a link.</summary>
    GreatestLag,

    /// <summary>That a run may not go on with nobody there.</summary>
    Permission,

    /// <summary>The hours in which a stage is counted or looked at, or in which a lag before it is.</summary>
    CountedHours,

    /// <summary>That the plan ends.</summary>
    Horizon,
}

/// <summary>One reason why a stage can never be done.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Index">The station, limit, stage or link; −1 for presence and the horizon.</param>
public readonly record struct ImpossibleReason(ImpossibleKind Kind, int Index);

/// <summary>
/// Finds, for a stage that can't be done even with as many stations as anyone likes, a smallest set of reasons: together they
/// make it impossible whatever else gives way, and without any one of them the others do not.
/// </summary>
/// <remarks>
/// The deletion filter of J. W. Chinneck and E. W. Dravnieks, "Locating minimal infeasible constraint sets in linear
/// programs", ORSA Journal on Computing 3 (1991): each reason is dropped in turn and put back where that makes the stage
/// possible. What is dropped first is missed least, so reasons that people can change last are tried first.
/// </remarks>
public static class SmallestReasons
{
    /// <summary>The reasons; none where the stage can be done.</summary>
    public static IReadOnlyList<ImpossibleReason> Of(BenchProblem problem, int stage)
    {
        var excerpt = new ReasonExcerpt(problem, stage);
        var dropped = new HashSet<ImpossibleReason>();
        if (!excerpt.IsImpossible(dropped))
        {
            return [];
        }

        var all = excerpt.Reasons().ToList();
        foreach (var reason in all)
        {
            dropped.Add(reason);
            if (!excerpt.IsImpossible(dropped))
            {
                dropped.Remove(reason);
            }
        }

        return [.. all.Where(reason => !dropped.Contains(reason))];
    }
}

/// <summary>A stage with all that it waits for, directly or not, and what must follow any of that soon.</summary>
internal sealed class ReasonExcerpt
{
    private readonly BenchProblem problem;
    private readonly int[] stages;
    private readonly int[] indices;
    private readonly int[] links;
    private readonly int stage;

    public ReasonExcerpt(BenchProblem problem, int stage)
    {
        (this.problem, this.stage) = (problem, stage);
        var chosen = Closure();
        stages = [.. Enumerable.Range(0, problem.Stages.Count).Where(i => chosen[i])];
        indices = new int[problem.Stages.Count];
        for (var i = 0; i < stages.Length; i++)
        {
            indices[stages[i]] = i;
        }

        links = [.. Enumerable.Range(0, problem.Links.Count).Where(l => chosen[problem.Links[l].From] && chosen[problem.Links[l].To])];
    }

    /// <summary>All that could give way, what people can change least first.</summary>
    public IEnumerable<ImpossibleReason> Reasons()
    {
        var modes = stages.SelectMany(s => problem.Stages[s].Modes).ToList();
        var stations = modes.SelectMany(mode => mode.Stations.Append(mode.Machine)).Where(s => s >= 0).Distinct().Order();
        return
        [
            new ImpossibleReason(ImpossibleKind.Horizon, -1),
            .. stages.Select(s => new ImpossibleReason(ImpossibleKind.CountedHours, s)),
            .. modes.SelectMany(mode => mode.Limits).Distinct().Order().Select(limit => new ImpossibleReason(ImpossibleKind.Limit, limit)),
            .. links.Where(l => problem.Links[l].AtMost is not null).Select(l => new ImpossibleReason(ImpossibleKind.GreatestLag, l)),
            .. stages.Where(s => problem.Stages[s].NotBefore > 0).Select(s => new ImpossibleReason(ImpossibleKind.Date, s)),
            new ImpossibleReason(ImpossibleKind.Presence, -1),
            .. stages.Where(s => problem.Stages[s].Kind == StageKind.Run).Select(s => new ImpossibleReason(ImpossibleKind.Permission, s)),
            .. stations.Select(station => new ImpossibleReason(ImpossibleKind.Hours, station)),
        ];
    }

    /// <summary>Whether the stage can't be done although some reasons are away.</summary>
    public bool IsImpossible(IReadOnlySet<ImpossibleReason> without)
    {
        var input = new BenchInput
        {
            Horizon = without.Contains(new ImpossibleReason(ImpossibleKind.Horizon, -1)) ? IntervalCalendar.MaximumMinute : problem.Horizon,
            Presence = Open(problem.Presence, without.Contains(new ImpossibleReason(ImpossibleKind.Presence, -1))),
            Stations = [.. problem.Stations.Select((s, i) => s with { Hours = Open(s.Hours, Without(ImpossibleKind.Hours, i)) })],
            Limits = [.. problem.Limits.Select((l, i) => l with { Open = Open(l.Open, Without(ImpossibleKind.Limit, i)) })],
            Stages = [.. stages.Select(Relaxed)],
            Links = [.. links.Select(Linked)],
        };
        var passes = new CalendarPasses(new CompiledProblem(new BenchProblem(input, StageGraph.Create(input.Stages.Count, input.Links))));
        return passes.EarlyStart[indices[stage]] < 0;

        bool Without(ImpossibleKind kind, int index) => without.Contains(new ImpossibleReason(kind, index));

        BenchStage Relaxed(int index)
        {
            var spec = problem.Stages[index];
            var counted = Without(ImpossibleKind.CountedHours, index);
            return spec with
            {
                NotBefore = Without(ImpossibleKind.Date, index) ? 0 : spec.NotBefore,
                Modes = Without(ImpossibleKind.Permission, index) ? [.. spec.Modes.Select(mode => mode with { RunsAlone = true })] : spec.Modes,
                GluedTo = spec.GluedTo < 0 ? -1 : indices[spec.GluedTo],
                WaitHours = counted ? null : spec.WaitHours,
                LookAt = counted ? null : spec.LookAt,
            };
        }

        BenchLink Linked(int index)
        {
            var link = problem.Links[index];
            return link with
            {
                From = indices[link.From],
                To = indices[link.To],
                AtMost = Without(ImpossibleKind.GreatestLag, index) ? null : link.AtMost,
                LagHours = Without(ImpossibleKind.CountedHours, link.To) ? null : link.LagHours,
            };
        }
    }

    private static IntervalCalendar Open(IntervalCalendar hours, bool always) =>
        always ? IntervalCalendar.Always(IntervalCalendar.MaximumMinute) : hours;

    private bool[] Closure()
    {
        var chosen = new bool[problem.Stages.Count];
        var open = new Stack<int>([stage]);
        while (open.TryPop(out var next))
        {
            if (chosen[next])
            {
                continue;
            }

            chosen[next] = true;
            foreach (var link in problem.Graph.Incoming(next))
            {
                open.Push(problem.Links[link].From);
            }

            foreach (var link in problem.Graph.Outgoing(next))
            {
                if (problem.Links[link].AtMost is not null || problem.Stages[problem.Links[link].To].GluedTo == next)
                {
                    open.Push(problem.Links[link].To);
                }
            }
        }

        return chosen;
    }
}
