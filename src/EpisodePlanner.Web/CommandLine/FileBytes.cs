using System.Globalization;
using EpisodePlanner.Planning.Files;

namespace EpisodePlanner.Web.CommandLine;

/// <summary>Reads files that people name.</summary>
internal static class FileBytes
{
    /// <summary>The bytes of a file, at most one more than a workshop file may have; null with a sentence why not.</summary>
    public static byte[]? Read(string file, out string problem)
    {
        problem = "";
        try
        {
            if (Directory.Exists(file))
            {
                problem = "This is a folder; name the workshop file in it.";
                return null;
            }

            using var stream = new FileStream(file, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
            if (stream.CanSeek && stream.Length > WorkshopFile.MaximumBytes)
            {
                problem = string.Create(
                    CultureInfo.InvariantCulture,
                    $"The file has {stream.Length:N0} bytes; at most {WorkshopFile.MaximumBytes:N0} are read.");
                return null;
            }

            return ReadSome(stream);
        }
        catch (Exception e) when (e is FileNotFoundException or DirectoryNotFoundException)
        {
            problem = "There is no such file; check the path, from the folder the command runs in.";
        }
        catch (UnauthorizedAccessException)
        {
            problem = "The file may not be read; give yourself the permission, or copy it.";
        }
        catch (Exception e) when (e is IOException or ArgumentException or NotSupportedException)
        {
            problem = $"The file can't be read: {e.Message}";
        }

        return null;
    }

    /// <summary>One byte too many is enough to know that a file is too large, and a device never ends.</summary>
    private static byte[] ReadSome(FileStream stream)
    {
        var most = WorkshopFile.MaximumBytes + 1;
        using var bytes = new MemoryStream();
        var buffer = new byte[81_920];
        while (bytes.Length < most && stream.Read(buffer, 0, (int)Math.Min(buffer.Length, most - bytes.Length)) is > 0 and var count)
        {
            bytes.Write(buffer, 0, count);
        }

        return bytes.ToArray();
    }
}
