namespace EpisodePlanner.Web.Tests.Http;

/// <summary>A clock that shows what a test sets; it starts at the demo's anchor.</summary>
internal sealed class SetClock : TimeProvider
{
    public DateTimeOffset Now { get; set; } = new(2026, 11, 25, 18, 0, 0, TimeSpan.Zero);

    public override DateTimeOffset GetUtcNow() => Now;
}
