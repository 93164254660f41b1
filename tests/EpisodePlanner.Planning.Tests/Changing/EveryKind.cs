namespace EpisodePlanner.Planning.Tests;

/// <summary>One change of every kind.</summary>
internal static class EveryKind
{
    /// <summary>Changes to a workshop that has something of everything, each of another kind.</summary>
    public static IReadOnlyList<Change> Of(Workshop workshop) =>
    [
        new NameChange("Shed"),
        new ZoneChange("UTC"),
        new SettingsChange(workshop.Settings),
        new AcceptedPlanChange(workshop.Accepted),
        .. ThingKinds.All.Select(kind => kind.Put(kind.All(workshop).First())),
        ((Applied)Changes.Apply(workshop with { ToldDates = [] }, ThingKinds.ToldDates.Put(workshop.ToldDates.First()))).Inverse,
        new Batch([new NameChange("Shed"), ThingKinds.Tasks.Remove(workshop.Tasks.First().Id)]),
    ];
}
