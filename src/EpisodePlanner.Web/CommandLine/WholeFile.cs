namespace EpisodePlanner.Web.CommandLine;

/// <summary>Writes files whole or not at all.</summary>
internal static class WholeFile
{
    /// <summary>Writes beside the file first, so that one that is there stays until the new one is complete.</summary>
    /// <returns>A sentence why not; null where it is written.</returns>
    public static string? Write(string path, byte[] bytes)
    {
        if (Directory.Exists(path))
        {
            return "This is a folder; name the file to write in it.";
        }

        var beside = $"{path}.{Environment.ProcessId}.part";
        try
        {
            File.WriteAllBytes(beside, bytes);
            File.Move(beside, path, overwrite: true);
            return null;
        }
        catch (DirectoryNotFoundException)
        {
            return "There is no such folder; make it, or write elsewhere.";
        }
        catch (UnauthorizedAccessException)
        {
            return "The file may not be written; give yourself the permission, or write elsewhere.";
        }
        catch (Exception e) when (e is IOException or ArgumentException or NotSupportedException)
        {
            File.Delete(beside);
            return $"The file can't be written: {e.Message}";
        }
    }
}
