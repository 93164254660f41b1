using EpisodePlanner.Planning;
using EpisodePlanner.Planning.Files;
using EpisodePlanner.Web.Tests.CommandLine;
using NodaTime;

namespace EpisodePlanner.Web.Tests.Pictures;

/// <summary>Plans that pictures are drawn of.</summary>
internal static class SamplePlans
{
    private static readonly Lazy<Plan> Made = new(() => Of(Papers.Root));

    /// <summary>The demo's, at a moment of its own time.</summary>
    public static Plan Demo => Made.Value;

    private static Plan Of(string root)
    {
        var workshop = WorkshopFile.Read(File.ReadAllBytes(Path.Combine(root, "demo-seed", "harbour-shed.json"))).Thing!;
        return Planner.Make(new PlanRequest(workshop, workshop.Demo!.Anchor.At(new LocalTime(18, 0)).InUtc().ToInstant()));
    }
}
