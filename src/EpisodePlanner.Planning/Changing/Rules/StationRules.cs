namespace EpisodePlanner.Planning;

/// <summary>Stations: ids of their own, hours that can be kept, permissions that can be given, places found.</summary>
internal static class StationRules
{
    public static void Check(Inspection inspection)
    {
        foreach (var person in inspection.Workshop.People)
        {
            HoursRules.Check(inspection, person.Hours, ThingKinds.People.At(person.Id).Member("hours"));
        }

        foreach (var machine in inspection.Workshop.Machines)
        {
            CheckMachine(inspection, machine, ThingKinds.Machines.At(machine.Id));
        }

        foreach (var place in inspection.Workshop.Places)
        {
            CheckPlace(inspection, place, ThingKinds.Places.At(place.Id));
        }
    }

    private static void CheckMachine(Inspection inspection, Machine machine, Spot at)
    {
        CheckOwnId(inspection, machine.Id, ThingKinds.Machines.Word, at);
        inspection.RefuseIf(
            machine.MayRunAlone && !RunningAlone.CanBeAllowed(machine.Kind),
            at.Member("mayRunAlone"),
            $"{Kind(machine.Kind)} never runs alone; remove mayRunAlone.");
        inspection.Leads(at.Member("place"), Referent.Place, machine.Place);
        HoursRules.Check(inspection, machine.Hours, at.Member("hours"));
    }

    private static void CheckPlace(Inspection inspection, Place place, Spot at)
    {
        CheckOwnId(inspection, place.Id, ThingKinds.Places.Word, at);
        HoursRules.Check(inspection, place.Hours, at.Member("hours"));
        HoursRules.CheckWeekly(inspection, place.Quiet, at.Member("quiet"));
        inspection.RefuseIf(
            place.DaylightOnly && place.Latitude is null && place.Longitude is null,
            at.Member("daylightOnly"),
            "Daylight is computed from coordinates; give latitude and longitude.");
        inspection.RefuseIf(
            place is { Latitude: null, Longitude: not null },
            at.Member("latitude"),
            "Coordinates go together; give the latitude beside the longitude.");
        inspection.RefuseIf(
            place is { Latitude: not null, Longitude: null },
            at.Member("longitude"),
            "Coordinates go together; give the longitude beside the latitude.");
    }

    private static void CheckOwnId(Inspection inspection, Id id, string word, Spot at)
    {
        var first = inspection.Register.StationWord(id);
        inspection.RefuseIf(
            first != word, at,
            $"The id '{id}' is taken by a {first}; stations share one set of ids, so give this {word} another.");
    }

    private static string Kind(MachineKind kind) => kind switch
    {
        MachineKind.Other => "A machine of another or unknown kind",
        MachineKind.Oven => "An oven",
        _ => $"A {kind.ToString().ToLowerInvariant()}",
    };
}
