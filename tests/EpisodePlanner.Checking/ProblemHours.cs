using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Checking;

/// <summary>The hours of a problem, each calendar read once.</summary>
internal sealed class ProblemHours(BenchProblem problem)
{
    private readonly Dictionary<IntervalCalendar, Hours> known = new(ReferenceEqualityComparer.Instance);
    private readonly Dictionary<(int Person, int Place), Hours> shared = [];

    public Hours Presence => Of(problem.Presence);

    public Hours Station(int station) => Of(problem.Stations[station].Hours);

    public Hours Limit(int limit) => Of(problem.Limits[limit].Open);

    /// <summary>When a person and a place are both open.</summary>
    public Hours Shared(int person, int place)
    {
        if (!shared.TryGetValue((person, place), out var hours))
        {
            hours = Station(person).And(Station(place));
            shared.Add((person, place), hours);
        }

        return hours;
    }

    public Hours Of(IntervalCalendar calendar)
    {
        if (!known.TryGetValue(calendar, out var hours))
        {
            hours = Hours.Of(calendar);
            known.Add(calendar, hours);
        }

        return hours;
    }

    /// <summary>The earliest moment a link's lag allows after a moment of the stage waited for; null for never.</summary>
    public long? Lag(BenchLink link, int moment) =>
        link.LagHours is null ? (long)moment + link.Lag : Of(link.LagHours).After(moment, link.Lag);

    /// <summary>When a wait is over that starts at a moment; null for never.</summary>
    public int? WaitEnd(BenchStage wait, int start) =>
        wait.WaitHours is null ? start + wait.Minutes : Of(wait.WaitHours).After(start, wait.Minutes);
}
