using EpisodePlanner.Planning;
using EpisodePlanner.Web.Pages;

namespace EpisodePlanner.Web.Features.Stations;

/// <summary>People, machines, or places.</summary>
/// <param name="Name">What they are.</param>
/// <param name="Lines">One line each.</param>
/// <param name="Empty">What is assumed where there is none.</param>
/// <param name="New">The form of a new one.</param>
/// <param name="Add">What leads to it.</param>
public sealed record StationSet(string Name, ValueList<StationLine> Lines, string Empty, string New, string Add)
{
    /// <summary>The three sets of a workshop.</summary>
    public static IEnumerable<StationSet> Of(DeskView view)
    {
        var (workshop, paths) = (view.Workshop, view.Paths);
        yield return new StationSet(
            "People",
            workshop.People.Select(p => Line(paths, ThingKinds.People, p.Id, p.Name, HoursWords.Of(p.Hours, "evenings (assumed)"))).ToValueList(),
            "Nobody is named, so one pair of hands in the evenings is assumed.",
            paths.New(ThingKinds.People),
            "Add a person");
        yield return new StationSet(
            "Machines",
            workshop.Machines.Select(m => Line(paths, ThingKinds.Machines, m.Id, m.Name, Machine(m))).ToValueList(),
            "No machine is named; runs need one.",
            paths.New(ThingKinds.Machines),
            "Add a machine");
        yield return new StationSet(
            "Places",
            workshop.Places.Select(p => Line(paths, ThingKinds.Places, p.Id, p.Name, Place(p))).ToValueList(),
            "No place is named, so one bench and one desk that are always free are assumed.",
            paths.New(ThingKinds.Places),
            "Add a place");
    }

    private static StationLine Line(Paths paths, ThingKind kind, Id id, string name, string says) =>
        new(paths.Edit(kind, id), name, says);

    private static string Machine(Machine machine) =>
        $"{HoursWords.Of(machine.Hours, "open always")}, {(machine.MayRunAlone ? "may run with nobody there" : "never with nobody there")}";

    private static string Place(Place place)
    {
        string?[] parts =
        [
            HoursWords.Of(place.Hours, "open always"),
            place.ByBookingOnly ? "by booking only" : null,
            place.DaylightOnly ? "in daylight only" : null,
            place.SetUpMinutes > 0 ? $"{Words.Minutes(place.SetUpMinutes)} to set up" : null,
            place.Quiet.Count > 0 ? "with quiet hours" : null,
        ];
        return string.Join(", ", parts.OfType<string>());
    }
}

/// <summary>A person, a machine or a place in a list.</summary>
/// <param name="Path">Its form.</param>
/// <param name="Name">Its name.</param>
/// <param name="Says">What matters about it.</param>
public sealed record StationLine(string Path, string Name, string Says);
