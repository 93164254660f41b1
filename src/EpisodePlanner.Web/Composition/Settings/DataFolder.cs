using EpisodePlanner.Planning;

namespace EpisodePlanner.Web.Composition;

/// <summary>The folder that the data is kept in.</summary>
internal static class DataFolder
{
    /// <summary>Makes the folder where it is missing, for its owner alone, and tries whether it can be written to.</summary>
    /// <returns>What is wrong; null where nothing is.</returns>
    public static Reason? Prepare(string folder)
    {
        try
        {
            Make(folder);
            var trial = Path.Combine(folder, $".trial-{Environment.ProcessId}");
            using (new FileStream(trial, FileMode.Create, FileAccess.Write, FileShare.None, 1, FileOptions.DeleteOnClose))
            {
                return null;
            }
        }
        catch (UnauthorizedAccessException)
        {
            return Refuse($"The folder '{folder}' can't be made or written to; give this user the permission, or name another one.");
        }
        catch (Exception e) when (e is IOException or ArgumentException or NotSupportedException)
        {
            return Refuse($"The folder '{folder}' can't be used: {e.Message} Name another one.");
        }
    }

    private static void Make(string folder)
    {
        if (OperatingSystem.IsWindows())
        {
            Directory.CreateDirectory(folder);
        }
        else
        {
            Directory.CreateDirectory(folder, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        }
    }

    private static Reason Refuse(string says) => new(SettingsTable.Data.Name, says);
}
