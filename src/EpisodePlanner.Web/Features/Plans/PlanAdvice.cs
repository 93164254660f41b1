using EpisodePlanner.Planning;

namespace EpisodePlanner.Web.Features.Plans;

/// <summary>A plan and what follows from it, ready to be told.</summary>
public sealed record PlanAdvice
{
    /// <summary>The plan.</summary>
    public required Plan Plan { get; init; }

    /// <summary>By how many weeks the dates of a demo were moved; null where they were not touched.</summary>
    public int? MovedWeeks { get; init; }

    /// <summary>Whether further plans were made to weigh what starts tonight and what was assumed.</summary>
    public bool IsWeighed { get; init; }

    /// <summary>The one thing hands can do now, or next.</summary>
    public required NextThing? Next { get; init; }

    /// <summary>The runs that start before tomorrow noon.</summary>
    public required ValueList<RunTonight> Tonight { get; init; }

    /// <summary>The shots that the work will make impossible.</summary>
    public required ValueList<ShotToFilm> FilmFirst { get; init; }

    /// <summary>Bookings, approvals, fit days and dates that others set.</summary>
    public required OutsideDates Outside { get; init; }

    /// <summary>What moved in the next seven days against the accepted plan.</summary>
    public required ValueList<MovedStart> Moved { get; init; }

    /// <summary>Since when the first silence beyond each promise can be foreseen, by series, the channel's under an empty id; empty where that was not looked at.</summary>
    public IReadOnlyDictionary<Id, ForeseenSince> Foreseen { get; init; } = new Dictionary<Id, ForeseenSince>();

    /// <summary>What was taken for granted, by how far it moves the next upload.</summary>
    public required ValueList<Assumption> Assumed { get; init; }

    /// <summary>A plan with all that follows from it.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="trials">Whether to plan again for what starts tonight and for what was assumed.</param>
    /// <param name="stop">Ends the trials; what comes out is then to be dropped.</param>
    public static PlanAdvice Of(Plan plan, bool trials, CancellationToken stop) => new()
    {
        Plan = plan,
        IsWeighed = trials,
        Next = NextThing.Of(plan),
        Tonight = trials ? RunsTonight.Of(plan, stop: stop) : [],
        FilmFirst = Filming.First(plan),
        Outside = OutsideDates.Of(plan, trials, stop),
        Moved = MovedStarts.Of(plan),
        Assumed = trials ? AssumptionRanking.Rank(plan, stop: stop) : [],
        Foreseen = trials ? Hindsight.Of(plan, stop) : new Dictionary<Id, ForeseenSince>(),
    };
}
