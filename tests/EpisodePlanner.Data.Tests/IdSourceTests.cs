using System.Security.Cryptography;
using NodaTime;

namespace EpisodePlanner.Data.Tests;

/// <summary>UUIDv7 as RFC 9562, section 5.7, lays it out.</summary>
public class IdSourceTests
{
    [Fact]
    public void Next_IsLaidOutAsTheRfcSays()
    {
        // Appendix A.6 of the RFC: 2022-02-22 14:22:22 -05:00 is 017F22E2-79B0-7…
        var clock = new TestClock();
        clock.Move(Instant.FromUtc(2022, 2, 22, 19, 22, 22) - clock.Now);

        var id = new IdSource(clock, RandomNumberGenerator.Create()).Next().ToString();

        Assert.StartsWith("017f22e2-79b0-7", id, StringComparison.Ordinal);
        Assert.Contains(id[19], "89ab");
        Assert.Equal(7, Guid.Parse(id).Version);
    }

    [Fact]
    public void Next_IsAnotherEachTime_AndLaterOnesComeLater()
    {
        var clock = new TestClock();
        var source = new IdSource(clock, RandomNumberGenerator.Create());

        var early = Enumerable.Range(0, 100).Select(_ => source.Next()).ToList();
        clock.Move(Duration.FromMilliseconds(1));
        var late = Enumerable.Range(0, 100).Select(_ => source.Next()).ToList();

        Assert.Equal(200, early.Concat(late).Distinct().Count());
        Assert.True(early.Max() < late.Min());
    }
}
