using System.Text;

namespace EpisodePlanner.Web.Tests.CommandLine;

/// <summary>Files for the tests: those that come with the project, and a folder of the test's own.</summary>
internal sealed class Papers : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("papers-");

    public static string Root { get; } = FindRoot();

    public static string Demo => Path.Combine(Root, "demo-seed", "harbour-shed.json");

    public static string FirstLines => Path.Combine(Root, "demo-seed", "first-lines.json");

    public string Folder => folder.FullName;

    public string Write(string text) => Write(Encoding.UTF8.GetBytes(text));

    public string Write(byte[] bytes)
    {
        var path = Path.Combine(folder.FullName, "workshop.json");
        File.WriteAllBytes(path, bytes);
        return path;
    }

    /// <summary>A small workshop in which one member is what the test says.</summary>
    public string Workshop(string tasks = "[]", string machines = "[]", string places = "[]", string people = People, string more = "") => Write($$"""
        {
          "format": 1, "name": "Shed", "zone": "Etc/UTC",
          "people": {{people}},
          "machines": {{machines}},
          "places": {{places}},
          "series": [{ "id": "s", "name": "Sand Yacht", "milestones": [{ "id": "m", "name": "it sails" }] }],
          "tasks": {{tasks}},
          "uploads": [{ "id": "u", "series": "s", "date": "2026-11-13" }]{{more}}
        }
        """);

    public const string People = """
        [{ "id": "me", "name": "Me", "hours": { "weekly": [{ "days": ["tuesday", "thursday"], "from": "19:00", "to": "22:00" }] } }]
        """;

    public void Dispose() => folder.Delete(recursive: true);

    private static string FindRoot()
    {
        var at = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(at.FullName, "EpisodePlanner.sln")))
        {
            at = at.Parent ?? throw new DirectoryNotFoundException("No EpisodePlanner.sln above the tests.");
        }

        return at.FullName;
    }
}
