using System.Globalization;
using EpisodePlanner.Planning;

namespace EpisodePlanner.Web.Telling;

/// <summary>Bookings, approvals, fit days and dates that others set; nothing where there is none of them.</summary>
internal static class OutsideText
{
    public static void Write(ISheet page, OutsideDates outside, PlanNames names)
    {
        if (outside.IsEmpty)
        {
            return;
        }

        page.Heading("What others and the weather decide");
        foreach (var ahead in outside.Bookings)
        {
            Write(page, ahead, names);
        }

        foreach (var round in outside.Rounds)
        {
            Write(page, round, names);
        }

        foreach (var fit in outside.FitDays)
        {
            Write(page, fit);
        }

        foreach (var needed in outside.Needed)
        {
            page.Item($"{PlanNames.Quote(needed.Task.Name)} is needed by {names.Day(needed.By)}: {Margin(needed, names)}.");
        }
    }

    private static void Write(ISheet page, BookingAhead ahead, PlanNames names)
    {
        var cost = ahead.Booking.Cost is { } price ? $", {price.ToString("0.##", CultureInfo.InvariantCulture)} paid" : "";
        var work = ahead.Work.Count == 0
            ? "nothing is planned in it; the work may not be ready, or be done before"
            : $"for {string.Join(", ", ahead.Work.Select(stage => PlanNames.Quote(stage.Name)).Distinct())}";
        page.Item($"{ahead.Place.Name} is booked {names.Day(ahead.Booking.From.Date)}{cost}: {work}.");
        if (ahead.DaysToCancel is { } days)
        {
            page.Below(days < 0
                ? $"The last day to cancel was {names.Day(ahead.Booking.CancelBy!.Value)}."
                : $"The last day to cancel is {names.Day(ahead.Booking.CancelBy!.Value)}, in {Words.Days(days)}.");
        }

        if (ahead.Missed is { } moves)
        {
            var until = ahead.Booking.NextWindow is { } next ? $"the next window is {names.Day(next.Date)}" : "no next window is known";
            page.Below($"If it is missed, {until}: {Later(moves)}.");
        }
    }

    private static void Write(ISheet page, AnotherRound round, PlanNames names)
    {
        var length = round.BusinessDays is { } days ? $" of {days} business {(days == 1 ? "day" : "days")}" : "";
        page.Item($"{PlanNames.Quote(round.Stage.Name)}, {(round.Stage.Start is { } start ? $"from {names.Moment(start)}" : "without a date")}: "
            + $"about {Tenths((double)round.Chance)} that another round{length} is needed.");
        if (round.Moves is { } moves)
        {
            page.Below($"With one more: {Later(moves)}.");
        }
    }

    private static void Write(ISheet page, FitDays fit)
    {
        page.Item($"{fit.Place.Name} needs fit weather on {Words.Days(fit.Days.Count)}: about {Tenths(fit.AllFit)} that all of them are fit.");
        page.Below($"So many fit days take {fit.MeanDays.ToString("0.#", CultureInfo.InvariantCulture)} on average; the plan's dates count every day as fit.");
    }

    private static string Margin(NeededDate needed, PlanNames names) => needed switch
    {
        { Done: null } => "it has no date",
        { Margin: < 0 } => $"done {names.Day(needed.Done!.Value)}, {Words.Days(-needed.Margin!.Value)} late",
        { Margin: 0 } => "done on that day, with nothing to spare",
        _ => $"done {names.Day(needed.Done!.Value)}, {Words.Days(needed.Margin!.Value)} to spare",
    };

    private static string Later(ValueList<UploadMove> moves)
    {
        var later = moves.Where(move => move.IsLater).ToList();
        return later.Count == 0 ? "no upload is later" : WhyWords.Moves(later);
    }

    /// <summary>"3 in 10", never 0 or 10.</summary>
    private static string Tenths(double chance) => $"{Math.Clamp((int)Math.Round(chance * 10), 1, 9)} in 10";
}
