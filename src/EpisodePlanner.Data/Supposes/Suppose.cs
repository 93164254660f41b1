using EpisodePlanner.Planning;
using NodaTime;

namespace EpisodePlanner.Data;

/// <summary>A draft of changes beside the real plan: what the maker supposes, to be kept or dropped.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Version">Its own version: 1 when it was made, one more each time it is changed.</param>
/// <param name="Name">What it is called, 1 to 200 characters.</param>
/// <param name="Base">The version of the workshop it was made from.</param>
/// <param name="Changes">The changes in order.</param>
/// <param name="Who">Who changed it last.</param>
/// <param name="At">When it was changed last.</param>
public sealed record Suppose(Id Id, long Version, string Name, long Base, Batch Changes, string Who, Instant At);

/// <summary>A draft replayed on the workshop as it is now.</summary>
/// <param name="Suppose">The draft.</param>
/// <param name="Now">The workshop as it is now.</param>
/// <param name="Draft">The workshop with the draft's changes; null where they no longer fit.</param>
/// <param name="Reasons">Why they no longer fit.</param>
/// <param name="ChangedSince">What the draft touches and somebody else changed since its base.</param>
public sealed record Supposed(
    Suppose Suppose, Snapshot Now, Workshop? Draft, ValueList<Reason> Reasons, ValueList<StaleThing> ChangedSince);
