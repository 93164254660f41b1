using EpisodePlanner.Planning;

namespace EpisodePlanner.Web.Features;

/// <summary>Makes ids for things that come without one: UUIDv7 (RFC 9562), so that they sort by when they were made.</summary>
/// <param name="clock">Tells the time.</param>
internal sealed class NewIds(TimeProvider clock)
{
    /// <summary>An id that nothing has.</summary>
    public Id Next() => new(Guid.CreateVersion7(clock.GetUtcNow()).ToString());
}
