using System.Text;
using System.Text.Json.Nodes;

namespace EpisodePlanner.Browser.Tests;

/// <summary>One demo site for a class of tests that change nothing.</summary>
public sealed class DemoSite : IAsyncLifetime
{
    /// <summary>The evening that the demo was written for.</summary>
    public static DateTimeOffset Evening { get; } = new(2026, 11, 25, 18, 0, 0, TimeSpan.Zero);

    internal Site Site { get; private set; } = null!;

    /// <summary>The demo's file with one more entry in its log.</summary>
    public static byte[] With(string entry)
    {
        var demo = JsonNode.Parse(File.ReadAllBytes(Path.Combine(EpisodePlanner.Browser.Tests.Site.Root, "demo-seed", "harbour-shed.json")))!;
        demo["log"]!.AsArray().Add(JsonNode.Parse(entry));
        return Encoding.UTF8.GetBytes(demo.ToJsonString());
    }

    public async ValueTask InitializeAsync() => Site = await Site.Demo();

    public ValueTask DisposeAsync() => Site.DisposeAsync();
}
