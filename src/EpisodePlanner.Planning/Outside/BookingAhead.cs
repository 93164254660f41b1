using NodaTime;

namespace EpisodePlanner.Planning;

/// <summary>A booking to come, the work that the plan puts into it, and what a miss would move.</summary>
public sealed record BookingAhead
{
    /// <summary>The booking.</summary>
    public required Booking Booking { get; init; }

    /// <summary>The place.</summary>
    public required Place Place { get; init; }

    /// <summary>The work planned within it, by start.</summary>
    public required ValueList<PlannedStage> Work { get; init; }

    /// <summary>Days from today to the last day to cancel, negative where that has passed; null where none is named.</summary>
    public required int? DaysToCancel { get; init; }

    /// <summary>
    /// The uploads that move where the booking is missed, so that only its next window is left; null where that was not tried.
    /// </summary>
    public required ValueList<UploadMove>? Missed { get; init; }

    internal static ValueList<BookingAhead> Of(Plan plan, bool trials, CancellationToken stop)
    {
        var workshop = plan.Request.Workshop;
        return workshop.Bookings
            .Where(booking => booking.To > plan.Now.LocalDateTime)
            .OrderBy(booking => booking.From)
            .ThenBy(booking => booking.Id)
            .Select(booking => Of(plan, booking, workshop.Places.Find(booking.Place)!, trials, stop))
            .ToValueList();
    }

    private static BookingAhead Of(Plan plan, Booking booking, Place place, bool trials, CancellationToken stop)
    {
        var work = plan.Stages.Where(stage => stage.Parts.Any(part => part.Stations.Contains(place.Id) && IsWithin(plan, part, booking))).ToValueList();
        return new BookingAhead
        {
            Booking = booking,
            Place = place,
            Work = work,
            DaysToCancel = booking.CancelBy is { } last ? Period.DaysBetween(plan.Now.Date, last) : null,
            Missed = trials && work.Count > 0 && !stop.IsCancellationRequested
                && Replanning.After(plan, Missing(booking), stop) is { } then
                ? UploadMoves.Between(plan, then)
                : null,
        };
    }

    private static bool IsWithin(Plan plan, PlannedPart part, Booking booking)
    {
        var start = part.Start.InZone(plan.Zone).LocalDateTime;
        return start >= booking.From && start < booking.To;
    }

    /// <summary>The booking as if it were for its next window, or were not made where there is none.</summary>
    private static BookingChange Missing(Booking booking) => booking.NextWindow is { } next
        ? new BookingChange(booking.Id, booking with { From = next, To = next + (booking.To - booking.From), NextWindow = null, CancelBy = null })
        : new BookingChange(booking.Id, null);
}
