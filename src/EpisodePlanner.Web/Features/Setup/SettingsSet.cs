using EpisodePlanner.Planning;
using EpisodePlanner.Web.Pages;

namespace EpisodePlanner.Web.Features.Setup;

/// <summary>Things of one kind that stand on the page of settings.</summary>
/// <param name="Name">What they are.</param>
/// <param name="Lines">One line each, with its form.</param>
/// <param name="Empty">What is said where there is none.</param>
/// <param name="New">The form of a new one.</param>
/// <param name="Add">What leads to it.</param>
public sealed record SettingsSet(string Name, ValueList<(string Path, string Words)> Lines, string Empty, string New, string Add)
{
    /// <summary>Slots, bookings, timed lines and told dates of a workshop.</summary>
    public static IEnumerable<SettingsSet> Of(DeskView view) =>
    [
        Set(view, ThingKinds.SlotRules, "When it is published", "No rule yet, so Fridays at 18:00 are assumed.", "Add a slot rule"),
        Set(view, ThingKinds.Bookings, "What is booked", "Nothing is booked.", "Add a booking"),
        Set(view, ThingKinds.TimedLines, "What must be said on screen in time", "Nothing with a date.", "Add a timed line"),
        Set(view, ThingKinds.ToldDates, "Dates told", "No date was told to anyone yet.", "Note a date you told"),
    ];

    private static SettingsSet Set(DeskView view, ThingKind kind, string name, string empty, string add) => new(
        name,
        kind.All(view.Workshop).Select(thing => (view.Paths.Edit(kind, thing.Id), Words(view.Workshop, thing))).ToValueList(),
        empty,
        view.Paths.New(kind),
        add);

    private static string Words(Workshop workshop, IThing thing) => thing switch
    {
        SlotRule rule => $"{rule.Rule}, {EpisodePlanner.Planning.Words.Time(rule.At)}",
        Booking booking => $"{workshop.Places.Find(booking.Place)?.Name}, {EpisodePlanner.Planning.Words.Day(booking.From.Date)}",
        ToldDate told => $"{EpisodePlanner.Planning.Words.Day(told.Date)}: \u201c{workshop.Episodes.Find(told.Episode)?.Title}\u201d, told to {told.To}",
        _ => ThingNames.Of(thing),
    };
}
