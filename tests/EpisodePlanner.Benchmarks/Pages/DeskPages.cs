namespace EpisodePlanner.Benchmarks.Pages;

/// <summary>The pages of a generated workshop that are measured.</summary>
internal static class DeskPages
{
    /// <summary>Names, and paths beneath the workshop's.</summary>
    public static IReadOnlyList<(string Name, string Path)> All { get; } =
    [
        ("Now", ""),
        ("Bench", "/bench"),
        ("Silence", "/silence"),
        ("Story", "/story"),
        ("Series", "/series"),
        ("one series", Series),
        ("Stations", "/stations"),
        ("Letter", "/letter"),
        ("an outline", "/outline/s0-e0000"),
        ("What changed", "/changes"),
        ("Settings", "/settings"),
        ("all settings", "/settings/all"),
        ("a task's form", Task),
        ("a series' form", "/edit/series/s0"),
        ("a new log entry", "/new/log"),
    ];

    /// <summary>The page of one series.</summary>
    public const string Series = "/series/s0";

    /// <summary>The form of one of its tasks, which is neither the first nor the last.</summary>
    public const string Task = "/edit/tasks/t00040";
}
