using NodaTime;

namespace EpisodePlanner.Planning;

/// <summary>Since when a silence beyond its promise could be foreseen.</summary>
/// <param name="Since">The first moment at which it was found to be in the plan.</param>
/// <param name="IsAtLeast">It was in the plan as far back as was looked.</param>
/// <param name="Failed">The work that failed between the last moment without it and <paramref name="Since"/>, by name; none where it only took longer.</param>
public sealed record ForeseenSince(Instant Since, bool IsAtLeast, ValueList<string> Failed);

/// <summary>
/// Looks back when a plan could first foresee its silences: plans made of the workshop as it is now, with the log and the uploads
/// as they were on earlier days. Each plan is made once, for all silences.
/// </summary>
public sealed class Hindsight
{
    private const int MostDays = 64;

    private readonly Dictionary<int, Plan> plans = [];
    private readonly Plan plan;
    private readonly CancellationToken stop;

    /// <summary>Looks back from a plan.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="stop">Ends the planning; what is told from then on is what was found before.</param>
    public Hindsight(Plan plan, CancellationToken stop = default) => (this.plan, this.stop) = (plan, stop);

    /// <summary>Since when each silence ahead can be foreseen: the first of each series, and of the channel under an empty id.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="stop">Ends the planning; what is told then is to be dropped.</param>
    public static IReadOnlyDictionary<Id, ForeseenSince> Of(Plan plan, CancellationToken stop = default)
    {
        var hindsight = new Hindsight(plan, stop);
        return SilencesAhead.Of(plan).ToDictionary(outlook => outlook.Series, outlook => hindsight.Of(outlook)!);
    }

    /// <summary>
    /// Since when the first silence of an outlook beyond its promise can be foreseen: a day on which it was, after one on which
    /// it was not. Days are looked at 1, 2, 4 and so on back, then between, so it may have been foreseen for a while before that.
    /// </summary>
    /// <param name="outlook">An outlook of the plan; null comes back where its promise holds.</param>
    public ForeseenSince? Of(Outlook outlook)
    {
        if (outlook.Alarms is not [var alarm, ..])
        {
            return null;
        }

        var known = 0;
        var unknown = 1;
        while (unknown <= MostDays && Foresees(unknown, outlook, alarm))
        {
            (known, unknown) = (unknown, unknown * 2);
        }

        if (unknown > MostDays)
        {
            return new ForeseenSince(Moment(known), true, []);
        }

        while (unknown - known > 1)
        {
            var between = (known + unknown) / 2;
            (known, unknown) = Foresees(between, outlook, alarm) ? (between, unknown) : (known, between);
        }

        return new ForeseenSince(Moment(known), false, Failed(Moment(unknown), Moment(known)));
    }

    private Instant Moment(int daysAgo) => plan.Request.PlannedAt - Duration.FromDays(daysAgo);

    private bool Foresees(int daysAgo, Outlook outlook, SilenceAhead alarm)
    {
        if (!plans.TryGetValue(daysAgo, out var then))
        {
            if (stop.IsCancellationRequested)
            {
                return false;
            }

            then = Planner.Make(plan.Request with { PlannedAt = Moment(daysAgo) }, stop: stop);
            plans.Add(daysAgo, then);
        }

        var same = then.Series.Append(then.Channel).FirstOrDefault(one => one.Series == outlook.Series);
        return same?.Alarms.Any(one => one.Due == alarm.Due || (one.Episode is not null && one.Episode == alarm.Episode)) == true;
    }

    private ValueList<string> Failed(Instant after, Instant until)
    {
        var workshop = plan.Request.Workshop;
        return workshop.Log
            .Where(entry => entry.Outcome == LogOutcome.Failed && entry.At > after && entry.At <= until)
            .Select(entry => entry.Task is { } task ? workshop.Tasks.Find(task)?.Name : null)
            .OfType<string>()
            .Distinct()
            .ToValueList();
    }
}
