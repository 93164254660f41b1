using EpisodePlanner.Web.CommandLine;
using NodaTime;

namespace EpisodePlanner.Web.Tests.CommandLine;

/// <summary>Rows of RFC 3339, section 5.8, and moments that are none.</summary>
public sealed class MomentsTests
{
    [Fact]
    public void Parse_OffsetBehind_IsTheSameMomentInUtc() =>
        Assert.Equal(Instant.FromUtc(1996, 12, 20, 0, 39, 57), Moments.Parse("1996-12-19T16:39:57-08:00"));

    [Fact]
    public void Parse_FractionAndOddOffset_IsTheSameMomentInUtc() => Assert.Equal(
        Instant.FromUtc(1937, 1, 1, 11, 40, 27) + Duration.FromMilliseconds(870), Moments.Parse("1937-01-01T12:00:27.87+00:20"));

    [Fact]
    public void Parse_SmallLetters_AreAllowed() =>
        Assert.Equal(Instant.FromUtc(1985, 4, 12, 23, 20, 50), Moments.Parse("1985-04-12t23:20:50z"));

    [Theory]
    [InlineData("1990-13-31T23:59:00Z")]
    [InlineData("2027-03-08")]
    [InlineData("2027-03-08T08:00:00")]
    [InlineData("2027-02-29T08:00:00Z")]
    [InlineData("08:00")]
    [InlineData("tomorrow")]
    [InlineData("")]
    public async Task Now_NoMoment_IsRefusedWithASentence(string typed)
    {
        Assert.Null(Moments.Parse(typed));

        var answer = await Shell.Run("plan", Papers.FirstLines, "--now", typed);

        Assert.Equal(2, answer.Code);
        Assert.StartsWith($"--now: '{typed}' is not a moment; write", answer.Error, StringComparison.Ordinal);
        Assert.Empty(answer.Output);
    }

    [Theory]
    [InlineData("1937-01-01T12:00:27.87+00:20")]
    [InlineData("9999-12-31T23:59:59Z")]
    public async Task Now_TooFarAway_IsRefusedWithASentence(string typed)
    {
        var answer = await Shell.Run("plan", Papers.FirstLines, "--now", typed);

        Assert.Equal(2, answer.Code);
        Assert.Contains("the years from 1970 to 2100 can be planned", answer.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Now_WithAnyOffset_PlansFromThatMoment()
    {
        var utc = await Shell.Run("plan", Papers.FirstLines, "--now", "2026-11-25T08:00:00Z");
        var offset = await Shell.Run("plan", Papers.FirstLines, "--now", "2026-11-25T13:30:00.5+05:30");

        Assert.Equal(0, utc.Code);
        Assert.Equal(utc.Output, offset.Output);
    }
}
