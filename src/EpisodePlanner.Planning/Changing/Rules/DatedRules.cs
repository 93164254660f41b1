namespace EpisodePlanner.Planning;

/// <summary>What hangs on dates: told dates, timed lines and bookings, each in its order.</summary>
internal static class DatedRules
{
    public static void CheckToldDates(Inspection inspection)
    {
        foreach (var told in inspection.Workshop.ToldDates)
        {
            var at = ThingKinds.ToldDates.At(told.Id);
            inspection.Leads(at.Member("episode"), Referent.Episode, told.Episode);
            inspection.RefuseIf(
                told.Date < told.ToldOn,
                at.Member("date"),
                "The date was over when it was told; put it on toldOn or later.");
        }
    }

    public static void CheckTimedLines(Inspection inspection)
    {
        foreach (var line in inspection.Workshop.TimedLines)
        {
            var at = ThingKinds.TimedLines.At(line.Id);
            inspection.Leads(at.Member("episode"), Referent.Episode, line.Episode);
            inspection.RefuseIf(
                line.Until < line.From,
                at.Member("until"),
                "The line ends before it begins; put 'until' on 'from' or later.");
            inspection.RefuseIf(
                line.DueBy < line.From || line.DueBy > line.Until,
                at.Member("dueBy"),
                "The line is due when it isn't true; put dueBy between 'from' and 'until'.");
        }
    }

    public static void CheckBookings(Inspection inspection)
    {
        foreach (var booking in inspection.Workshop.Bookings)
        {
            var at = ThingKinds.Bookings.At(booking.Id);
            inspection.Leads(at.Member("place"), Referent.Place, booking.Place);
            inspection.RefuseIf(
                booking.To <= booking.From,
                at.Member("to"),
                "The booking ends before it begins; put 'to' after 'from'.");
        }
    }
}
