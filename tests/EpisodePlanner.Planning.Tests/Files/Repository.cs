namespace EpisodePlanner.Planning.Tests.Files;

/// <summary>Files that are committed beside the code and held equal to what the code makes.</summary>
internal static class Repository
{
    /// <summary>Whether such files are to be written anew instead.</summary>
    public static bool IsUpdating => Environment.GetEnvironmentVariable("EPISODEPLANNER_UPDATE") == "1";

    /// <summary>The full path of a file of the project.</summary>
    public static string File(string path)
    {
        var directory = new DirectoryInfo(AppContext.BaseDirectory);
        while (!System.IO.File.Exists(Path.Combine(directory.FullName, "EpisodePlanner.sln")))
        {
            directory = directory.Parent ?? throw new DirectoryNotFoundException("EpisodePlanner.sln is in no directory above.");
        }

        return Path.Combine(directory.FullName, path);
    }
}
