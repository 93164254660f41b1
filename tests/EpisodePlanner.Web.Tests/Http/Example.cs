using EpisodePlanner.Planning;
using EpisodePlanner.Planning.Files;
using EpisodePlanner.Web.Tests.CommandLine;

namespace EpisodePlanner.Web.Tests.Http;

/// <summary>The small workshop from which the examples of the description are taken.</summary>
internal static class Example
{
    public static string Path => System.IO.Path.Combine(
        Papers.Root, "src", "EpisodePlanner.Web", "Features", "Reference", "example-workshop.json");

    public static string Text => File.ReadAllText(Path);

    /// <summary>The same, as the planner reads it.</summary>
    public static Workshop Workshop
    {
        get
        {
            var read = WorkshopFile.Read(File.ReadAllBytes(Path));
            return read.IsRead ? read.Thing : throw new InvalidOperationException(string.Join("\n", read.Reasons));
        }
    }

    /// <summary>The same in canonical form.</summary>
    public static byte[] Canonical => WorkshopFile.Write(Workshop);
}
