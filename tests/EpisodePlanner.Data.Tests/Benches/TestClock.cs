using NodaTime;

namespace EpisodePlanner.Data.Tests;

/// <summary>A clock that stands until it is moved.</summary>
public sealed class TestClock : TimeProvider
{
    private Instant now = Instant.FromUtc(2027, 3, 1, 8, 0, 30);

    public Instant Now => now;

    public void Move(Duration by) => now += by;

    public override DateTimeOffset GetUtcNow() => now.ToDateTimeOffset();
}
