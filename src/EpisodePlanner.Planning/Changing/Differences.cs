namespace EpisodePlanner.Planning;

/// <summary>What leads from one workshop to another.</summary>
public static class Differences
{
    /// <summary>
    /// The changes that make one workshop like another, or null where nothing differs. Told dates are kept for ever:
    /// those that the other lacks stay. Whether a workshop is a demo, and of which format its file was, can't be changed.
    /// </summary>
    /// <param name="from">The workshop as it is.</param>
    /// <param name="to">The workshop as it shall be.</param>
    public static Batch? Between(Workshop from, Workshop to)
    {
        var changes = Whole(from, to).Concat(ThingKinds.All.SelectMany(kind => Things(kind, from, to))).ToValueList();
        return changes.Count > 0 ? new Batch(LostShots.Keeping(new Batch(changes), from, to).Unfolded().ToValueList()) : null;
    }

    private static IEnumerable<Change> Whole(Workshop from, Workshop to)
    {
        if (from.Name != to.Name)
        {
            yield return new NameChange(to.Name);
        }

        if (from.Zone != to.Zone)
        {
            yield return new ZoneChange(to.Zone);
        }

        if (from.Settings != to.Settings)
        {
            yield return new SettingsChange(to.Settings);
        }

        if (from.Accepted != to.Accepted)
        {
            yield return new AcceptedPlanChange(to.Accepted);
        }
    }

    private static IEnumerable<Change> Things(ThingKind kind, Workshop from, Workshop to)
    {
        var put = kind.All(to).Where(thing => !thing.Equals(kind.Find(from, thing.Id))).Select(kind.Put);
        var gone = kind == ThingKinds.ToldDates ? [] : kind.All(from).Where(thing => kind.Find(to, thing.Id) is null);
        return put.Concat(gone.Select(thing => kind.Remove(thing.Id)));
    }
}
