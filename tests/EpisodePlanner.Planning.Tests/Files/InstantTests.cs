using System.Text;
using EpisodePlanner.Planning.Files;

namespace EpisodePlanner.Planning.Tests.Files;

public sealed class InstantTests
{
    // Published: RFC 3339 §5.8; checks.md §4.
    [Theory]
    [InlineData("1996-12-19T16:39:57-08:00", "1996-12-20T00:39:57Z")]
    [InlineData("1937-01-01T12:00:27.87+00:20", "1937-01-01T11:40:27.87Z")]
    [InlineData("1985-04-12T23:20:50.52Z", "1985-04-12T23:20:50.52Z")]
    // Published: RFC 3339 §5.6, letters may be lower case; the rest computed by hand.
    [InlineData("1985-04-12t23:20:50.520z", "1985-04-12T23:20:50.52Z")]
    [InlineData("2027-03-05T18:00:00-00:00", "2027-03-05T18:00:00Z")]
    [InlineData("2027-03-05T18:00:00.000000001Z", "2027-03-05T18:00:00.000000001Z")]
    public void Read_AnOffset_IsWrittenInUtc(string typed, string written)
    {
        var read = Read(typed);

        Assert.Empty(read.Reasons);
        Assert.Contains($"\"at\": \"{written}\"", Encoding.UTF8.GetString(WorkshopFile.Write(read.Thing!)), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("1990-13-31T23:59:00Z")] // Published: checks.md §4, after RFC 3339 §5.7
    [InlineData("1990-12-31T23:59:60Z")] // a leap second, which time in hours and minutes can't hold
    [InlineData("2027-02-29T00:00:00Z")]
    [InlineData("2027-03-05T24:00:00Z")]
    [InlineData("2027-03-05T18:00Z")]
    [InlineData("2027-03-05 18:00:00Z")]
    [InlineData("2027-03-05T18:00:00,5Z")]
    [InlineData("2027-03-05T18:00:00+0100")]
    [InlineData("-0001-03-05T18:00:00Z")]
    [InlineData("9999-12-31T23:59:59-18:00")]
    public void Read_NoMoment_IsRefused(string typed) => Assert.Equal("$.at", Assert.Single(Read(typed).Reasons).Where);

    private static ReadResult<LogEntry> Read(string at) =>
        WorkshopFile.Read<LogEntry>(Bytes.Of($$"""{ "id": "x", "at": "{{at}}", "outcome": "done" }"""));
}
