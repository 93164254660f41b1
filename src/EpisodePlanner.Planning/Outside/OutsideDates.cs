namespace EpisodePlanner.Planning;

/// <summary>What a plan has to do with the world outside the shed: bookings, approvals, weather, dates that others set.</summary>
public sealed record OutsideDates
{
    /// <summary>The bookings to come, by opening.</summary>
    public required ValueList<BookingAhead> Bookings { get; init; }

    /// <summary>Approvals that may need another round, by start.</summary>
    public required ValueList<AnotherRound> Rounds { get; init; }

    /// <summary>Work that needs fit days, place by place.</summary>
    public required ValueList<FitDays> FitDays { get; init; }

    /// <summary>Work that is needed by a date for a reason outside, by date.</summary>
    public required ValueList<NeededDate> Needed { get; init; }

    /// <summary>Whether there is anything to tell.</summary>
    public bool IsEmpty => Bookings.Count + Rounds.Count + FitDays.Count + Needed.Count == 0;

    /// <summary>Looks at a plan.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="trials">Whether to plan again for what a missed booking and another round would move.</param>
    /// <param name="stop">Ends the trials.</param>
    public static OutsideDates Of(Plan plan, bool trials, CancellationToken stop = default) => new()
    {
        Bookings = BookingAhead.Of(plan, trials, stop),
        Rounds = AnotherRound.Of(plan, trials, stop),
        FitDays = Planning.FitDays.Of(plan),
        Needed = NeededDate.Of(plan),
    };
}
