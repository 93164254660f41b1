using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Text.Json.Nodes;
using EpisodePlanner.Benchmarks.Measuring;
using EpisodePlanner.Databases;
using EpisodePlanner.Trials.Apps;

namespace EpisodePlanner.Benchmarks.Web;

/// <summary>Measures the server over one generated workshop, step by step.</summary>
internal sealed class WebRun(PlannerUnderTest planner, int connections, TimeSpan length)
{
    private const int Repeats = 15;
    private const int BatchSize = 1_000;

    /// <summary>The plan with its bytes cached, a bare server that sends the same bytes, and answers without a body; per second.</summary>
    public async Task<(double Plan, double Bare, double NotModified, int Bytes)> Throughput()
    {
        var path = $"{planner.Workshop}/plan";
        using var first = await planner.Send(HttpMethod.Get, path);
        var bytes = await first.Content.ReadAsByteArrayAsync();
        await using var bare = await BareServer.Start(bytes);
        var (plan, floor, unmodified) = (new List<double>(), new List<double>(), new List<double>());
        for (var round = 0; round < 4; round++)
        {
            plan.Add(await Load.Measure(planner.Client, () => new(HttpMethod.Get, path), HttpStatusCode.OK, connections, length));
            floor.Add(await Load.Measure(bare.Client, () => new(HttpMethod.Get, "/"), HttpStatusCode.OK, connections, length));
            unmodified.Add(await Load.Measure(planner.Client, Conditional, HttpStatusCode.NotModified, connections, length));
        }

        // The first round warms up.
        return (plan.Skip(1).Max(), floor.Skip(1).Max(), unmodified.Skip(1).Max(), bytes.Length);

        HttpRequestMessage Conditional()
        {
            var request = new HttpRequestMessage(HttpMethod.Get, path);
            request.Headers.IfNoneMatch.Add(first.Headers.ETag!);
            return request;
        }
    }

    /// <summary>A task is changed and the new plan read: the whole of it, and the change alone.</summary>
    /// <param name="query">How the plan is asked for.</param>
    public async Task<(TimeSpan Whole, TimeSpan Change)> ChangedTask(string query)
    {
        var list = await planner.ReadJson($"{planner.Workshop}/tasks?limit=1");
        var task = list["items"]![0]!["thing"]!.AsObject();
        var (whole, change) = (new List<TimeSpan>(), new List<TimeSpan>());
        for (var i = 0; i < Repeats; i++)
        {
            task["note"] = string.Create(CultureInfo.InvariantCulture, $"{query}{i}");
            var begun = Stopwatch.GetTimestamp();
            using (await planner.Send(HttpMethod.Put, $"{planner.Workshop}/tasks/{task["id"]}", task.ToJsonString(), "*"))
            {
                change.Add(Stopwatch.GetElapsedTime(begun));
            }

            await planner.Read($"{planner.Workshop}/plan{query}");
            whole.Add(Stopwatch.GetElapsedTime(begun));
        }

        return (Stopwatching.Median(whole), Stopwatching.Median(change));
    }

    /// <summary>The workshop is loaded by a store that has never seen it.</summary>
    public async Task<TimeSpan> ColdLoad()
    {
        var times = new List<TimeSpan>();
        for (var i = 0; i < Repeats; i++)
        {
            times.Add(await planner.LoadCold());
        }

        return Stopwatching.Median(times);
    }

    /// <summary>A thousand changes in one batch, each of another task.</summary>
    public async Task<TimeSpan> Batch()
    {
        var tasks = (await planner.ReadJson($"{planner.Workshop}/export"))["tasks"]!.AsArray().Take(BatchSize).ToList();
        var times = new List<TimeSpan>();
        for (var i = 0; i < Repeats; i++)
        {
            var body = BatchOf(tasks, i);
            var begun = Stopwatch.GetTimestamp();
            using (await planner.Send(HttpMethod.Post, $"{planner.Workshop}/changes", body, "*"))
            {
                times.Add(Stopwatch.GetElapsedTime(begun));
            }
        }

        return Stopwatching.Median(times);
    }

    /// <summary>From the start of the published app to its first answer, over a database that is prepared.</summary>
    public static async Task<TimeSpan> StartToAnswer(string program)
    {
        await using var database = await new SqliteDatabases().New();
        var times = new List<TimeSpan>();
        for (var i = 0; i < Repeats / 2; i++)
        {
            var begun = Stopwatch.GetTimestamp();
            await using var app = await RunningApp.Start(program, AppSettings.For(database), Path.GetTempPath(), CancellationToken.None);
            times.Add(Stopwatch.GetElapsedTime(begun));
        }

        return Stopwatching.Median(times.Skip(1));
    }

    private static string BatchOf(IEnumerable<JsonNode?> tasks, int round)
    {
        var changes = new JsonArray();
        foreach (var task in tasks)
        {
            var to = task!.DeepClone().AsObject();
            to["note"] = round.ToString(CultureInfo.InvariantCulture);
            changes.Add((JsonNode)new JsonObject { ["kind"] = "task", ["id"] = to["id"]!.DeepClone(), ["to"] = to });
        }

        return new JsonObject { ["changes"] = changes }.ToJsonString();
    }
}
