using NodaTime;

namespace EpisodePlanner.Planning;

/// <summary>Hours that can be kept: days that exist, times that go together, ends after beginnings.</summary>
internal static class HoursRules
{
    public static void Check(Inspection inspection, OpenHours? hours, Spot at)
    {
        if (hours is null)
        {
            return;
        }

        CheckWeekly(inspection, hours.Weekly, at.Member("weekly"));
        foreach (var (dated, spot) in hours.Dated.At(at.Member("dated")))
        {
            CheckDated(inspection, dated, spot);
        }

        foreach (var (busy, spot) in hours.Busy.At(at.Member("busy")))
        {
            inspection.RefuseIf(
                busy.To <= busy.From,
                spot.Member("to"),
                "This busy time ends before it begins; put its end after its beginning.");
        }
    }

    public static void CheckWeekly(Inspection inspection, ValueList<WeeklyHours> weekly, Spot at)
    {
        foreach (var (hours, spot) in weekly.At(at))
        {
            foreach (var (day, where) in hours.Days.At(spot.Member("days")))
            {
                inspection.RefuseIf(
                    day is < IsoDayOfWeek.Monday or > IsoDayOfWeek.Sunday, where,
                    "This is no day of the week; name one from Monday to Sunday.");
            }
        }
    }

    private static void CheckDated(Inspection inspection, DatedHours dated, Spot at)
    {
        inspection.RefuseIf(
            dated.Through < dated.On,
            at.Member("through"),
            "The last day comes before the first; put it on the first or later.");
        var times = (dated.From is null ? 0 : 1) + (dated.To is null ? 0 : 1);
        if (dated.Kind is DatedHoursKind.Extra)
        {
            inspection.RefuseIf(times < 2, at, "Extra hours need both times; give 'from' and 'to'.");
        }
        else
        {
            inspection.RefuseIf(
                times == 1, at,
                "Closed hours have both times or none; give 'from' and 'to', or neither for the whole day.");
        }
    }
}
