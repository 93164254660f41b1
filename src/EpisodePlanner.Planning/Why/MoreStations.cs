namespace EpisodePlanner.Planning;

/// <summary>"One more printer": a second station that may be used wherever the first may.</summary>
internal static class MoreStations
{
    private const int MostOfAKind = 3;

    public static IEnumerable<WhatIfIdea> Of(EpisodeChain chain)
    {
        var workshop = chain.Workshop;
        return
        [
            .. chain.People.Take(MostOfAKind).Select(person => MoreHands(workshop, person)),
            .. chain.Machines.Take(MostOfAKind).Select(machine => OneMore(workshop, machine)),
            .. chain.Places.Where(place => !place.ByBookingOnly).Take(MostOfAKind).Select(place => OneMore(workshop, place)),
        ];
    }

    /// <summary>One more of a station; null where there is no such station, or a place that is open by booking only.</summary>
    public static WhatIfIdea? Of(Workshop workshop, Id station) =>
        workshop.Machines.Find(station) is { } machine ? OneMore(workshop, machine)
        : workshop.Places.Find(station) is { } place ? place.ByBookingOnly ? null : OneMore(workshop, place)
        : StationTable.PeopleOf(workshop).FirstOrDefault(one => one.Id == station) is { } person ? MoreHands(workshop, person)
        : null;

    private static WhatIfIdea OneMore(Workshop workshop, Machine machine) => OneMore(
        workshop, machine.Id, machine.Name, FreeId(workshop, machine.Name), id => new MachineChange(id, machine with { Id = id, Name = More(machine.Name) }));

    private static WhatIfIdea OneMore(Workshop workshop, Place place) => OneMore(
        workshop, place.Id, place.Name, FreeId(workshop, place.Name), id => new PlaceChange(id, place with { Id = id, Name = More(place.Name) }));

    private static WhatIfIdea MoreHands(Workshop workshop, Person person)
    {
        var says = person.Name == Defaults.Maker.Name
            ? "a second pair of hands, free when you are"
            : $"a second pair of hands, free when {person.Name} is";
        return new WhatIfIdea(WhatIfKind.OneMore, says, MoreHands(workshop, person, "more hands", person.Hours));
    }

    /// <summary>One more person with hours of their own, who may do whatever somebody may.</summary>
    public static Batch MoreHands(Workshop workshop, Person person, string name, OpenHours? hours)
    {
        var id = FreeId(workshop, name);
        var helper = new PersonChange(id, person with { Id = id, Name = name, Hours = hours });
        Change[] people = workshop.People.Contains(person.Id) ? [helper] : [new PersonChange(person.Id, person), helper];
        return new Batch([.. people, .. AlsoUsing(workshop, person.Id, id)]);
    }

    private static WhatIfIdea OneMore(Workshop workshop, Id station, string name, Id more, Func<Id, Change> add) => new(
        WhatIfKind.OneMore, $"one more “{name}”", new Batch([add(more), .. AlsoUsing(workshop, station, more)]));

    /// <summary>Every choice that names a station names the second one too.</summary>
    private static IEnumerable<Change> AlsoUsing(Workshop workshop, Id station, Id more) => workshop.Tasks
        .Where(task => task.Stages.Any(stage => stage.Needs.Any(choice => choice.Contains(station))))
        .Select(task => new TaskChange(task.Id, task with { Stages = task.Stages.Select(stage => AlsoUsing(stage, station, more)).ToValueList() }));

    private static Stage AlsoUsing(Stage stage, Id station, Id more) => stage with
    {
        Needs = stage.Needs.Select(choice => choice.Contains(station) ? [.. choice, more] : choice).ToValueList(),
    };

    private static string More(string name) => $"second {name}"[..Math.Min(200, name.Length + 7)];

    /// <summary>Stations share their ids, whatever kind they are.</summary>
    private static Id FreeId(Workshop workshop, string name)
    {
        var id = ThingNames.IdFor(name, ThingKinds.Machines, workshop);
        for (var i = 2; IsTaken(workshop, id); i++)
        {
            id = ThingNames.IdFor($"more {i}", ThingKinds.Machines, workshop);
        }

        return id;
    }

    private static bool IsTaken(Workshop workshop, Id id) =>
        workshop.Machines.Contains(id) || workshop.Places.Contains(id) || StationTable.PeopleOf(workshop).Any(person => person.Id == id);
}
