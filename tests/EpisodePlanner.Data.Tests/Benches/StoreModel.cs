using EpisodePlanner.Planning;

namespace EpisodePlanner.Data.Tests;

/// <summary>
/// What the store must do, by plain lists in memory: every version of the workshop is there as a whole. From memory of
/// what its documentation says; it shares no code with the store but <see cref="Changes.Apply"/>.
/// </summary>
internal sealed class StoreModel(Workshop first)
{
    private readonly List<Entry> entries = [new(Act.Begin, new Batch([]), first, null)];
    private readonly Dictionary<Aggregate, IThing> deleted = [];

    public Workshop Now => entries[^1].After;

    public long Version => entries.Count;

    /// <summary>The version at which each aggregate changed last.</summary>
    public Dictionary<Aggregate, long> Versions { get; } = All(first).ToDictionary(what => what, _ => 1L);

    public IReadOnlyCollection<Aggregate> Deleted => deleted.Keys;

    public IEnumerable<(Act Act, long? Of, bool IsUndone)> History =>
        entries.Select(entry => (entry.Act, entry.Of, entry.IsUndone)).Reverse();

    /// <summary>The name of the outcome's type.</summary>
    public string Make(Change change) => Apply(Act.Change, change, null);

    public string Restore(Aggregate what) => deleted.TryGetValue(what, out var thing)
        ? Apply(Act.Restore, ThingKinds.Find(what.Kind)!.Put(thing), null)
        : nameof(NothingThere);

    public string Undo()
    {
        var last = entries.FindLastIndex(entry => entry is { IsMade: true, IsUndone: false });
        return last < 0 ? nameof(NothingThere) : Back(last);
    }

    public string Undo(long version)
    {
        var entry = version > entries.Count ? null : entries[(int)version - 1];
        return entry?.Act switch
        {
            null or Act.Begin => nameof(NothingThere),
            Act.Undo => entries[(int)entry.Of!.Value - 1].UndoneBy == version ? Again((int)entry.Of.Value - 1) : nameof(NothingThere),
            Act.Redo => Back((int)entry.Of!.Value - 1),
            _ => Back((int)version - 1),
        };
    }

    public string Redo()
    {
        var lastMade = entries.FindLastIndex(entry => entry.IsMade) + 1;
        var undone = entries.Where(entry => entry.UndoneBy > lastMade).MaxBy(entry => entry.UndoneBy);
        return undone is null ? nameof(NothingThere) : Again(entries.IndexOf(undone));
    }

    private static IEnumerable<Aggregate> All(Workshop workshop) => ThingKinds.All
        .SelectMany(kind => kind.All(workshop).Select(thing => kind.Of(thing.Id)))
        .Concat([Aggregate.About, Aggregate.Settings])
        .Concat(workshop.Accepted is null ? [] : [Aggregate.Accepted]);

    /// <summary>What a change set, as a value that can be compared: name and zone are two things.</summary>
    private static IEnumerable<object?> Parts(Change change, Workshop workshop) => change switch
    {
        Batch batch => batch.Changes.SelectMany(each => Parts(each, workshop)),
        NameChange => [workshop.Name],
        ZoneChange => [workshop.Zone],
        _ => change.Touches().Select(what => Value(workshop, what)),
    };

    private static object? Value(Workshop workshop, Aggregate what) =>
        what == Aggregate.About ? (workshop.Name, workshop.Zone)
        : what == Aggregate.Settings ? workshop.Settings
        : what == Aggregate.Accepted ? workshop.Accepted
        : ThingKinds.Find(what.Kind)!.Find(workshop, what.Id);

    private string Back(int index)
    {
        var entry = entries[index];
        if (entry.IsUndone)
        {
            return nameof(NothingThere);
        }

        var outcome = Parts(entry.Change, Now).SequenceEqual(Parts(entry.Change, entry.After))
            ? Apply(Act.Undo, Inverse(index), index + 1)
            : nameof(Stale);
        entry.UndoneBy = outcome == nameof(Made) ? Version : entry.UndoneBy;
        return outcome;
    }

    private string Again(int index)
    {
        var entry = entries[index];
        var outcome = Parts(entry.Change, Now).SequenceEqual(Parts(entry.Change, entries[index - 1].After))
            ? Apply(Act.Redo, entry.Change, index + 1)
            : nameof(Stale);
        entry.UndoneBy = outcome == nameof(Made) ? null : entry.UndoneBy;
        return outcome;
    }

    private Change Inverse(int index) =>
        ((Applied)Changes.Apply(entries[index - 1].After, entries[index].Change)).Inverse;

    private string Apply(Act act, Change change, long? of)
    {
        var (before, result) = (Now, Changes.Apply(Now, change));
        if (result is not Applied applied)
        {
            return nameof(Broken);
        }

        if (applied.Workshop == before)
        {
            return nameof(Unchanged);
        }

        entries.Add(new Entry(act, change, applied.Workshop, of));
        foreach (var what in All(before).Union(All(Now)).Where(what => !Equals(Value(before, what), Value(Now, what))))
        {
            Note(what, before);
        }

        return nameof(Made);
    }

    private void Note(Aggregate what, Workshop before)
    {
        if (Value(Now, what) is not null)
        {
            Versions[what] = Version;
            deleted.Remove(what);
            return;
        }

        Versions.Remove(what);
        if (Value(before, what) is IThing thing)
        {
            deleted[what] = thing;
        }
    }

    private sealed record Entry(Act Act, Change Change, Workshop After, long? Of)
    {
        public long? UndoneBy { get; set; }

        public bool IsUndone => UndoneBy is not null;

        public bool IsMade => Act is Act.Change or Act.Restore;
    }
}
