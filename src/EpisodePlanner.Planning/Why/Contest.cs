using EpisodePlanner.Scheduling;
using NodaTime;

namespace EpisodePlanner.Planning;

/// <summary>One series whose work goes before another's at a station.</summary>
/// <param name="Winner">The series whose work has the station; empty for work on the workshop itself.</param>
/// <param name="Loser">The series whose work waits for it.</param>
/// <param name="Times">How many stages wait.</param>
/// <param name="Minutes">Minutes that they wait together, counted from when all else would let them start.</param>
/// <param name="First">The first stage that waits.</param>
/// <param name="Before">The stage that it waits for.</param>
public sealed record Rivalry(Id Winner, Id Loser, int Times, long Minutes, PlannedStage First, PlannedStage Before);

/// <summary>A station that more work wants than it can hold.</summary>
/// <param name="Station">The station.</param>
/// <param name="Name">Its name.</param>
/// <param name="Minutes">Minutes of waiting for it, all stages together.</param>
/// <param name="Rivalries">Who waits for whom, the longest wait first.</param>
public sealed record Contest(Id Station, string Name, long Minutes, ValueList<Rivalry> Rivalries)
{
    /// <summary>Whose work goes first by plan.</summary>
    public Rivalry Greatest => Rivalries[0];

    /// <summary>The stations that stages wait for which start before a moment, by what the plan names as their causes.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="until">The moment.</param>
    internal static ValueList<Contest> Of(Plan plan, Instant until)
    {
        var byKey = plan.Stages.ToDictionary(stage => stage.Key);
        var ready = new ReadyMinutes(plan.Schedule);
        var waits = new List<Wait>();
        foreach (var stage in plan.Stages.Where(stage => stage.Start < until))
        {
            if (stage.Cause is { Kind: CauseKind.StationHeld or CauseKind.AcceptedOrder, Station: { } station, Stage: { } holder })
            {
                waits.Add(new Wait(station, stage, byKey[holder], ready.WaitOf(stage.Index)));
            }
        }

        return waits.GroupBy(wait => wait.Station)
            .Select(group => Of(plan, group.Key, [.. group]))
            .OrderByDescending(contest => contest.Minutes)
            .ThenBy(contest => contest.Station)
            .ToValueList();
    }

    private static Contest Of(Plan plan, Id station, IReadOnlyList<Wait> waits) => new(
        station,
        NameOf(plan.Request.Workshop, station),
        waits.Sum(wait => wait.Minutes),
        waits.GroupBy(wait => (Winner: wait.Holder.Series, Loser: wait.Stage.Series))
            .Select(group => Of(group.Key.Winner, group.Key.Loser, [.. group]))
            .OrderByDescending(rivalry => rivalry.Minutes)
            .ThenBy(rivalry => rivalry.First.Start)
            .ToValueList());

    private static Rivalry Of(Id winner, Id loser, IReadOnlyList<Wait> waits)
    {
        var first = waits.MinBy(wait => wait.Stage.Start)!;
        return new Rivalry(winner, loser, waits.Count, waits.Sum(wait => wait.Minutes), first.Stage, first.Holder);
    }

    private static string NameOf(Workshop workshop, Id station) =>
        workshop.Machines.Find(station)?.Name
        ?? workshop.Places.Find(station)?.Name
        ?? StationTable.PeopleOf(workshop).First(person => person.Id == station).Name;

    private sealed record Wait(Id Station, PlannedStage Stage, PlannedStage Holder, int Minutes);
}

/// <summary>When links and dates alone would let stages start.</summary>
internal sealed class ReadyMinutes
{
    private readonly BenchSchedule schedule;
    private readonly int[] ready;

    public ReadyMinutes(BenchSchedule schedule)
    {
        this.schedule = schedule;
        ready = [.. schedule.Problem.Stages.Select(stage => stage.NotBefore)];
        foreach (var link in schedule.Problem.Links.Where(link => schedule.IsPlaced(link.From)))
        {
            ready[link.To] = Math.Max(ready[link.To], Bound(link));
        }
    }

    /// <summary>Elapsed minutes from then to the start of a placed stage.</summary>
    public int WaitOf(int stage) => Math.Max(0, schedule.Start(stage) - ready[stage]);

    private int Bound(BenchLink link)
    {
        var leaves = link.Kind is LinkKind.After or LinkKind.TogetherFinish ? schedule.Finish(link.From) : schedule.Start(link.From);
        return link.Kind is LinkKind.After or LinkKind.TogetherStart
            ? link.LagHours is { } hours ? hours.Finish(leaves, link.Lag) ?? leaves : leaves + link.Lag
            : 0;
    }
}
