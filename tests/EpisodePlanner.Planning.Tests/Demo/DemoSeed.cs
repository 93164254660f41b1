using EpisodePlanner.Planning.Files;

namespace EpisodePlanner.Planning.Tests.Demo;

/// <summary>The workshops that come with the project, read from the repository.</summary>
internal static class DemoSeed
{
    public static byte[] Bytes(string name) => File.ReadAllBytes(Path.Combine(Folder(), name));

    public static Workshop Read(string name)
    {
        var read = WorkshopFile.Read(Bytes(name));
        Assert.Empty(read.Reasons);
        return read.Thing!;
    }

    private static string Folder()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "EpisodePlanner.sln")))
        {
            folder = folder.Parent ?? throw new DirectoryNotFoundException("No EpisodePlanner.sln above the tests.");
        }

        return Path.Combine(folder.FullName, "demo-seed");
    }
}
