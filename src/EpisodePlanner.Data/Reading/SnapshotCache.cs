using EpisodePlanner.Planning;
using NodaTime;

namespace EpisodePlanner.Data.Reading;

/// <summary>A snapshot, and when the change was made that led to it.</summary>
internal sealed record DatedSnapshot(Snapshot Snapshot, Instant ChangedAt);

/// <summary>
/// Keeps the newest snapshots of the workshops used last, in memory. Whether one is still the newest is for the reader to
/// ask the database. Safe to use at once.
/// </summary>
/// <param name="mostThings">How many aggregates are kept at most, over all workshops but the one used last.</param>
internal sealed class SnapshotCache(int mostThings)
{
    private readonly Lock turn = new();
    private readonly Dictionary<Id, LinkedListNode<DatedSnapshot>> byId = [];
    private readonly LinkedList<DatedSnapshot> byUse = new();
    private long things;

    /// <summary>The newest snapshot known of a workshop, or null.</summary>
    public DatedSnapshot? Find(Id workshop)
    {
        lock (turn)
        {
            if (!byId.TryGetValue(workshop, out var node))
            {
                return null;
            }

            byUse.Remove(node);
            byUse.AddFirst(node);
            return node.Value;
        }
    }

    /// <summary>Keeps a snapshot in the place of an older one; one that is older than what is known is not kept.</summary>
    public void Put(DatedSnapshot snapshot)
    {
        lock (turn)
        {
            var workshop = snapshot.Snapshot.Id;
            if (byId.TryGetValue(workshop, out var known) && known.Value.Snapshot.Version > snapshot.Snapshot.Version)
            {
                return;
            }

            Drop(workshop);
            byId[workshop] = byUse.AddFirst(snapshot);
            things += Weight(snapshot);
            while (things > mostThings && byUse.Count > 1)
            {
                Drop(byUse.Last!.Value.Snapshot.Id);
            }
        }
    }

    /// <summary>Forgets a workshop.</summary>
    public void Remove(Id workshop)
    {
        lock (turn)
        {
            Drop(workshop);
        }
    }

    private static int Weight(DatedSnapshot snapshot) => snapshot.Snapshot.Versions.Count;

    private void Drop(Id workshop)
    {
        if (byId.Remove(workshop, out var node))
        {
            byUse.Remove(node);
            things -= Weight(node.Value);
        }
    }
}
