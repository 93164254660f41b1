namespace EpisodePlanner.Planning;

/// <summary>What is left of a change: it can be taken back while all that it touched is as it left it.</summary>
public static class Aftermath
{
    /// <summary>What the change touched and is no longer as the change left it, each once.</summary>
    /// <param name="change">A change that was made.</param>
    /// <param name="now">The workshop as it is now.</param>
    public static ValueList<Aggregate> ChangedSince(Change change, Workshop now)
    {
        var looked = new Dictionary<(Aggregate What, Type Part), bool>();
        foreach (var each in change.Unfolded())
        {
            // Of several changes to one thing the last has left it as it was.
            looked[Part(each)] = IsAsLeft(each, now);
        }

        return looked.Where(pair => !pair.Value).Select(pair => pair.Key.What).Distinct().ToValueList();
    }

    /// <summary>What a single change sets: name and zone are two parts of one aggregate.</summary>
    private static (Aggregate What, Type Part) Part(Change change) =>
        (change.Touches().Single(), change is ZoneChange ? typeof(ZoneChange) : typeof(Change));

    private static bool IsAsLeft(Change change, Workshop now) => change switch
    {
        NameChange name => now.Name == name.To,
        ZoneChange zone => now.Zone == zone.To,
        SettingsChange settings => now.Settings == settings.To,
        AcceptedPlanChange accepted => now.Accepted == accepted.To,
        ToldDateTakenBack back => !now.ToldDates.Contains(back.Was.Id),
        IThingChange thing => Equals(thing.Set.Find(now, thing.Id), thing.To),
        _ => throw new ArgumentOutOfRangeException(nameof(change), change, "A kind of change that is not known here."),
    };
}
