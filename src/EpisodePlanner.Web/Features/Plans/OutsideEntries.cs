using EpisodePlanner.Planning;
using EpisodePlanner.Web.Features.Why;

namespace EpisodePlanner.Web.Features.Plans;

/// <summary>What a plan has to do with the world outside the shed.</summary>
/// <param name="Bookings">Bookings to come, by opening.</param>
/// <param name="Rounds">Approvals that may need another round, by start.</param>
/// <param name="FitDays">Work that needs fit days, place by place.</param>
/// <param name="Needed">Work that is needed by a date, by date.</param>
public sealed record OutsideEntry(
    IReadOnlyList<BookingEntry> Bookings,
    IReadOnlyList<RoundEntry> Rounds,
    IReadOnlyList<FitDaysEntry> FitDays,
    IReadOnlyList<NeededEntry> Needed);

/// <summary>A booking to come.</summary>
/// <param name="Booking">The booking.</param>
/// <param name="Place">Its place.</param>
/// <param name="From">When it opens, local time.</param>
/// <param name="Work">The work planned within it.</param>
/// <param name="CancelBy">The last day to cancel, or null.</param>
/// <param name="DaysToCancel">Days until then, negative where it has passed, or null.</param>
/// <param name="Missed">The uploads that move where it is missed; null where that was not tried.</param>
public sealed record BookingEntry(
    string Booking,
    string Place,
    string From,
    IReadOnlyList<KeyEntry> Work,
    string? CancelBy,
    int? DaysToCancel,
    IReadOnlyList<DayMoveEntry>? Missed);

/// <summary>An approval that may need another round.</summary>
/// <param name="Stage">The wait.</param>
/// <param name="Chance">The chance of another round.</param>
/// <param name="BusinessDays">Business days of a round, or null where it is counted in hours.</param>
/// <param name="Moved">The uploads that move with one round more; null where that was not tried.</param>
public sealed record RoundEntry(KeyEntry Stage, decimal Chance, int? BusinessDays, IReadOnlyList<DayMoveEntry>? Moved);

/// <summary>Days that must be fit.</summary>
/// <param name="Place">The place.</param>
/// <param name="Chance">The chance of a fit day.</param>
/// <param name="Days">The days on which the plan works there.</param>
/// <param name="AllFit">The chance that all of them are fit, rounded to hundredths.</param>
/// <param name="MeanDays">The days that so many fit ones take on average, rounded to tenths.</param>
public sealed record FitDaysEntry(string Place, decimal Chance, IReadOnlyList<string> Days, decimal AllFit, decimal MeanDays);

/// <summary>Work that is needed by a date.</summary>
/// <param name="Task">The task.</param>
/// <param name="By">The day by whose end it is needed.</param>
/// <param name="Done">The day on which the plan finishes it, or null.</param>
/// <param name="Margin">Days to spare, negative where it is late, or null.</param>
public sealed record NeededEntry(string Task, string By, string? Done, int? Margin);

/// <summary>Makes these entries.</summary>
internal static class OutsideDocuments
{
    /// <summary>The entry of a plan's outside dates.</summary>
    public static OutsideEntry Of(OutsideDates outside) => new(
        [.. outside.Bookings.Select(ahead => new BookingEntry(
            $"{ahead.Booking.Id}",
            $"{ahead.Place.Id}",
            DocumentValues.Local(ahead.Booking.From),
            [.. ahead.Work.Select(stage => DocumentValues.Key(stage.Key))],
            DocumentValues.Day(ahead.Booking.CancelBy),
            ahead.DaysToCancel,
            Moves(ahead.Missed)))],
        [.. outside.Rounds.Select(round => new RoundEntry(
            DocumentValues.Key(round.Stage.Key), round.Chance, round.BusinessDays, Moves(round.Moves)))],
        [.. outside.FitDays.Select(fit => new FitDaysEntry(
            $"{fit.Place.Id}",
            fit.Chance,
            [.. fit.Days.Select(DocumentValues.Day)],
            decimal.Round((decimal)fit.AllFit, 2),
            decimal.Round((decimal)fit.MeanDays, 1)))],
        [.. outside.Needed.Select(needed => new NeededEntry(
            $"{needed.Task.Id}", DocumentValues.Day(needed.By), DocumentValues.Day(needed.Done), needed.Margin))]);

    private static IReadOnlyList<DayMoveEntry>? Moves(ValueList<UploadMove>? moves) => moves is null
        ? null
        : [.. moves.Select(move => new DayMoveEntry($"{move.Episode}", DocumentValues.Day(move.From), DocumentValues.Day(move.To)))];
}
