namespace EpisodePlanner.Databases.Folders;

/// <summary>A temporary folder, removed when disposed of, or by a later run where this one could not.</summary>
/// <remarks>
/// A file in it stays locked as long as the process lives. A folder whose lock can be had belongs to nobody.
/// </remarks>
internal sealed class TemporaryFolder : IDisposable
{
    private const string LockName = "in-use";
    private readonly FileStream held;

    private TemporaryFolder(string path)
    {
        Path = path;
        // It is locked before it has the name that others look for.
        var unnamed = System.IO.Path.Combine(path, "new");
        held = new FileStream(unnamed, FileMode.CreateNew, FileAccess.Write, FileShare.None);
        File.Move(unnamed, System.IO.Path.Combine(path, LockName));
    }

    public string Path { get; }

    /// <summary>Makes a folder that only this user can look into.</summary>
    /// <param name="purpose">A word in its name.</param>
    public static TemporaryFolder Create(string purpose) =>
        new(Directory.CreateTempSubdirectory(Prefix(purpose)).FullName);

    /// <summary>Removes what runs that crashed have left.</summary>
    /// <param name="purpose">The word in the names.</param>
    /// <param name="before">What to do with a folder before it goes.</param>
    public static async Task Sweep(string purpose, Func<string, Task> before)
    {
        var folders = Directory.GetDirectories(System.IO.Path.GetTempPath(), $"{Prefix(purpose)}*");
        foreach (var folder in folders)
        {
            using var lockFile = TryLock(System.IO.Path.Combine(folder, LockName));
            if (lockFile is not null)
            {
                await before(folder);
                Remove(folder);
            }
        }
    }

    public void Dispose()
    {
        Remove(Path);
        held.Dispose();
    }

    private static string Prefix(string purpose) => $"episode-planner-{purpose}-";

    private static void Remove(string folder)
    {
        if (Directory.Exists(folder))
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static FileStream? TryLock(string path)
    {
        try
        {
            return new FileStream(path, FileMode.Open, FileAccess.Write, FileShare.None);
        }
        catch (Exception refused) when (refused is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }
}
