using System.Collections.Immutable;
using EpisodePlanner.Data.Reading;
using EpisodePlanner.Planning;
using NodaTime;

namespace EpisodePlanner.Data;

/// <summary>A workshop as it is stored at one version, with the version of each of its aggregates. Immutable.</summary>
public sealed class Snapshot
{
    private readonly ImmutableDictionary<Aggregate, long> versions;

    /// <summary>A workshop at a version.</summary>
    /// <param name="id">The workshop's own id.</param>
    /// <param name="workshop">What it holds; sound.</param>
    /// <param name="version">Its version, 1 or more; 0 where it was not stored.</param>
    /// <param name="plannedAt">The moment from which plans of this version look ahead, whole minutes.</param>
    /// <param name="versions">The version at which each aggregate that exists was changed last.</param>
    public Snapshot(Id id, Workshop workshop, long version, Instant plannedAt, ImmutableDictionary<Aggregate, long> versions)
    {
        (Id, Workshop, Version, PlannedAt) = (id, workshop, version, plannedAt);
        this.versions = versions;
    }

    /// <summary>The workshop's own id, a UUIDv7.</summary>
    public Id Id { get; }

    /// <summary>What the workshop holds.</summary>
    public Workshop Workshop { get; }

    /// <summary>The version: 1 when it was made, one more with every change.</summary>
    public long Version { get; }

    /// <summary>
    /// The moment from which plans of this version look ahead, in whole minutes: that of the last change, or later, where
    /// a start or a slot of the plan has passed since.
    /// </summary>
    public Instant PlannedAt { get; }

    /// <summary>The versions of the aggregates that exist.</summary>
    public IReadOnlyDictionary<Aggregate, long> Versions => versions;

    /// <summary>The workshop's version at which this aggregate was changed last; null where it does not exist.</summary>
    public long? VersionOf(Aggregate what) => versions.TryGetValue(what, out var version) ? version : null;

    /// <summary>The same with another moment of planning.</summary>
    internal Snapshot PlannedFrom(Instant plannedAt) =>
        plannedAt == PlannedAt ? this : new Snapshot(Id, Workshop, Version, plannedAt, versions);

    /// <summary>The next version, after a change to some aggregates.</summary>
    /// <param name="after">The workshop after the change.</param>
    /// <param name="changed">What really differs.</param>
    /// <param name="at">When it was changed.</param>
    internal Snapshot Next(Workshop after, IEnumerable<Aggregate> changed, Instant at)
    {
        var next = versions.ToBuilder();
        foreach (var what in changed)
        {
            if (Aggregates.Find(after, what) is null)
            {
                next.Remove(what);
            }
            else
            {
                next[what] = Version + 1;
            }
        }

        return new Snapshot(Id, after, Version + 1, Moments.Minute(at), next.ToImmutable());
    }
}
