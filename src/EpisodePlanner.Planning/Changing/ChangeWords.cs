using System.Globalization;

namespace EpisodePlanner.Planning;

/// <summary>Says in a line what a change does, for the history.</summary>
public static class ChangeWords
{
    private const int MostTold = 3;
    private const int LongestName = 80;

    /// <summary>What the change does to a workshop: "Changed task “Weld frame”".</summary>
    /// <param name="change">The change.</param>
    /// <param name="before">The workshop before it.</param>
    public static string Say(Change change, Workshop before) => change switch
    {
        NameChange name => $"Renamed the workshop to {Quote(name.To)}",
        ZoneChange zone => $"Moved the workshop to the time zone {zone.To}",
        SettingsChange => "Changed the settings",
        AcceptedPlanChange accepted => accepted.To is null ? "Let go of the accepted plan" : "Accepted a plan",
        ToldDateTakenBack back => $"Took back told date {Quote(ThingNames.Of(back.Was))}",
        Batch batch => Say([.. batch.Unfolded()], before),
        IThingChange thing => Say(thing, thing.Set.Find(before, thing.Id)),
        _ => "Changed the workshop",
    };

    private static string Say(Change[] changes, Workshop before)
    {
        if (changes.Length == 0)
        {
            return "Changed nothing";
        }

        var told = string.Join("; ", changes.Take(MostTold).Select((change, i) => Lower(Say(change, before), i > 0)));
        return changes.Length <= MostTold
            ? told
            : string.Create(CultureInfo.InvariantCulture, $"{told}; and {changes.Length - MostTold:N0} more");
    }

    private static string Say(IThingChange change, IThing? before) => (before, change.To) switch
    {
        (null, { } to) => $"Added {change.Set.Word} {Quote(ThingNames.Of(to))}",
        ({ } was, null) => $"Removed {change.Set.Word} {Quote(ThingNames.Of(was))}",
        ({ } was, { } to) when IsNamed(was) && ThingNames.Of(was) != ThingNames.Of(to) =>
            $"Renamed {change.Set.Word} {Quote(ThingNames.Of(was))} to {Quote(ThingNames.Of(to))}",
        (_, { } to) => $"Changed {change.Set.Word} {Quote(ThingNames.Of(to))}",
        _ => $"Removed {change.Set.Word} '{change.Id}'",
    };

    private static bool IsNamed(IThing thing) => thing is Person or Machine or Place or Series or WorkTask or Episode;

    private static string Lower(string sentence, bool isInside) =>
        isInside ? char.ToLowerInvariant(sentence[0]) + sentence[1..] : sentence;

    private static string Quote(string name) =>
        $"\u201c{(name.Length <= LongestName ? name : name[..(LongestName - 1)].TrimEnd() + "\u2026")}\u201d";
}
