using System.Text.Encodings.Web;
using System.Text.Json;

namespace EpisodePlanner.Web.Tests.CommandLine;

public sealed class PlanJsonTests
{
    private static readonly JsonSerializerOptions Relaxed = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    private static async Task<JsonElement> Plan(string file)
    {
        var answer = await Shell.Run("plan", file, "--now", "2026-11-25T08:00:00Z", "--format", "json");
        Assert.Equal((0, ""), (answer.Code, answer.Error));
        return JsonSerializer.Deserialize<JsonElement>(answer.Output);
    }

    [Fact]
    public async Task FirstLines_MembersComeInOrder() => Assert.Equal(
        [
            "format", "workshop", "zone", "plannedAt", "horizon", "demoMovedWeeks", "nextUpload", "tasks", "episodes",
            "series", "channel", "nextThing", "tonight", "filmFirst", "outside", "moved", "findings", "assumed",
            "search",
        ],
        (await Plan(Papers.FirstLines)).EnumerateObject().Select(member => member.Name));

    [Fact]
    public async Task FirstLines_TaskHasNetworkAndBench()
    {
        var cut = (await Plan(Papers.FirstLines)).GetProperty("tasks").EnumerateArray().Single(t => t.GetProperty("id").GetString() == "cut-tube");

        Assert.Equal(
            """{"earlyStart":"2026-11-26T19:00:00+00:00","earlyFinish":"2026-12-01T19:24:00+00:00","lateStart":"2026-11-26T19:00:00+00:00","lateFinish":"2026-12-01T19:24:00+00:00","totalFloatMinutes":0,"freeFloatMinutes":0,"critical":true}""",
            Compact(cut.GetProperty("network")));
        var bench = cut.GetProperty("bench");
        Assert.Equal("2026-11-26T19:00:00+00:00", bench.GetProperty("start").GetString());
        Assert.Equal("2026-12-01T19:24:00+00:00", bench.GetProperty("finish").GetString());
        Assert.Equal("closedHours", bench.GetProperty("cause").GetProperty("kind").GetString());
        Assert.Equal("me", bench.GetProperty("cause").GetProperty("station").GetString());
    }

    [Fact]
    public async Task FirstLines_EpisodeHasReadySlotPublishAndChain()
    {
        var episode = Assert.Single((await Plan(Papers.FirstLines)).GetProperty("episodes").EnumerateArray());

        Assert.Equal("2027-01-26T21:16:00+00:00", episode.GetProperty("ready").GetString());
        Assert.Equal("2027-01-29T18:00", episode.GetProperty("slot").GetProperty("opening").GetString());
        Assert.Equal("2027-01-29T18:00:00+00:00", episode.GetProperty("publish").GetString());
        Assert.Equal(
            ["predecessor", "predecessor", "predecessor", "predecessor", "predecessor", "closedHours"],
            episode.GetProperty("chain").EnumerateArray().Select(step => step.GetProperty("cause").GetProperty("kind").GetString()));
        Assert.Single(episode.GetProperty("tail").EnumerateArray());
    }

    [Fact]
    public async Task FirstLines_SeriesHasSilencesPastAndToCome()
    {
        var series = Assert.Single((await Plan(Papers.FirstLines)).GetProperty("series").EnumerateArray());

        Assert.Equal("""[{"from":"2026-11-13","to":null,"days":12}]""", Compact(series.GetProperty("past")));
        Assert.StartsWith("""[{"from":"2026-11-13","to":"2027-01-29","days":77},""", Compact(series.GetProperty("forecast")), StringComparison.Ordinal);
        Assert.Equal(
            """[{"due":"2026-12-04","ends":"2027-01-29","daysOver":56,"episode":"kite-barrow.rest"}]""", Compact(series.GetProperty("alarms")));
        Assert.Equal("""{"longestSilenceDays":21,"uploadsPerMonth":null,"assumed":true}""", Compact(series.GetProperty("promise")));
    }

    [Fact]
    public async Task Demo_EveryTaskWithABenchStart_HasItsCauseAndItsPlaceInTheNetwork()
    {
        var tasks = (await Plan(Papers.Demo)).GetProperty("tasks").EnumerateArray().ToList();

        Assert.InRange(tasks.Count, 40, 120);
        Assert.All(tasks, task =>
        {
            Assert.NotEmpty(task.GetProperty("bench").GetProperty("cause").GetProperty("says").GetString()!);
            var network = task.GetProperty("network");
            Assert.True(network.GetProperty("totalFloatMinutes").GetInt32() >= 0);
            Assert.True(Moment(network, "earlyStart") <= Moment(task.GetProperty("bench"), "start"));
            Assert.True(Moment(network, "earlyFinish") <= Moment(network, "lateFinish"));
        });
    }

    private static DateTimeOffset Moment(JsonElement from, string member) => from.GetProperty(member).GetDateTimeOffset();

    private static string Compact(JsonElement element) => JsonSerializer.Serialize(element, Relaxed);
}
