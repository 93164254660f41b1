using System.Globalization;

namespace EpisodePlanner.Databases.Servers;

/// <summary>The programs of a PostgreSQL that is installed on this machine.</summary>
internal sealed record Installation(string Folder)
{
    private const int Oldest = 15;
    private const string Versions = "/usr/lib/postgresql";

    public string InitDb => Path.Combine(Folder, "initdb");

    public string PgCtl => Path.Combine(Folder, "pg_ctl");

    /// <summary>The newest one of Debian's folders, else the one on the path.</summary>
    public static Installation? Find() => InVersions().Concat(OnPath())
        .Select(folder => new Installation(folder))
        .FirstOrDefault(found => File.Exists(found.InitDb) && File.Exists(found.PgCtl));

    private static IEnumerable<string> InVersions() => !Directory.Exists(Versions)
        ? []
        : Directory.EnumerateDirectories(Versions)
            .Select(folder => (Folder: folder, Version: Version(folder)))
            .Where(found => found.Version >= Oldest)
            .OrderByDescending(found => found.Version)
            .Select(found => Path.Combine(found.Folder, "bin"));

    private static string[] OnPath() => (Environment.GetEnvironmentVariable("PATH") ?? "")
        .Split(Path.PathSeparator, StringSplitOptions.RemoveEmptyEntries);

    private static int Version(string folder) =>
        int.TryParse(Path.GetFileName(folder), NumberStyles.None, CultureInfo.InvariantCulture, out var version)
            ? version
            : 0;
}
