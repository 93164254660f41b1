namespace EpisodePlanner.Planning;

/// <summary>What a plan has to say about bookings that have passed while work for their place is left.</summary>
internal static class OutsideFindings
{
    public static IEnumerable<Finding> Of(PlanDraft draft)
    {
        var now = draft.Axis.LocalOf(0).LocalDateTime;
        var needed = draft.Bench.Stages
            .SelectMany(stage => stage.Stage.Modes, (stage, mode) => (stage, mode))
            .SelectMany(x => x.mode.Stations, (x, station) => (Place: draft.Stations.IdOf(station), x.stage.Stage.Name))
            .ToLookup(x => x.Place, x => x.Name);
        foreach (var booking in draft.Workshop.Bookings.Where(booking => booking.To <= now && needed[booking.Place].Any()))
        {
            var place = draft.Workshop.Places.Find(booking.Place)!;
            var isOpenLater = draft.Workshop.Bookings.Any(other => other.Place == place.Id && other.To > now);
            if (!place.ByBookingOnly || isOpenLater)
            {
                continue;
            }

            var passed = $"The booking of {place.Name} on {Words.Day(booking.From.Date)} has passed, and \u201c{needed[place.Id].First()}\u201d is still to be done there: ";
            yield return new Finding(
                FindingKind.Note,
                $"$.bookings['{booking.Id}']",
                passed + (booking.NextWindow is { } next && next > now
                    ? $"its next window opens {Words.Day(next.Date)}; if that is booked, write it down as a booking."
                    : "book a day to come, or take the place off the work."));
        }
    }
}
