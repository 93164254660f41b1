using EpisodePlanner.Databases.Folders;
using Npgsql;

namespace EpisodePlanner.Databases.Servers;

/// <summary>A server of the machine's own PostgreSQL, in a temporary folder.</summary>
/// <remarks>
/// It listens on a socket in that folder, which only its user can look into: it needs no port and no password.
/// </remarks>
internal static class OwnServer
{
    private const string Purpose = "postgres";

    public static async Task<PostgreSqlServer?> TryStart(List<string> reasons)
    {
        if (Installation.Find() is not { } installation)
        {
            reasons.Add("PostgreSQL 15 or later is not installed");
            return null;
        }

        await TemporaryFolder.Sweep(Purpose, left => Stop(installation, left));
        var folder = TemporaryFolder.Create(Purpose);
        try
        {
            await Create(installation, folder.Path);
            await Run(installation, folder.Path);
        }
        catch
        {
            folder.Dispose();
            throw;
        }

        return new PostgreSqlServer(ConnectionString(folder.Path), async () =>
        {
            await Stop(installation, folder.Path);
            folder.Dispose();
        });
    }

    private static string Data(string folder) => Path.Combine(folder, "data");

    private static string Log(string folder) => Path.Combine(folder, "log");

    private static string ConnectionString(string folder) => new NpgsqlConnectionStringBuilder
    {
        Host = folder,
        Username = ServerUser.Name,
        Database = "postgres",
    }.ToString();

    private static async Task Create(Installation installation, string folder)
    {
        await ServerUser.Own(folder);
        await ServerUser.Must(
            installation.InitDb,
            [
                "--pgdata", Data(folder), "--username", ServerUser.Name, "--auth=trust",
                "--encoding=UTF8", "--no-locale", "--no-sync", "--no-instructions",
            ]);
        IEnumerable<(string Name, string Value)> settings =
        [
            .. PostgreSqlServer.Settings,
            ("listen_addresses", "''"), ("unix_socket_directories", $"'{folder}'"), ("port", "5432"),
        ];
        await File.AppendAllLinesAsync(
            Path.Combine(Data(folder), "postgresql.conf"), settings.Select(each => $"{each.Name} = {each.Value}"));
    }

    private static async Task Run(Installation installation, string folder)
    {
        try
        {
            await ServerUser.MustUnheard(
                installation.PgCtl, ["start", "--silent", "--wait", "--pgdata", Data(folder), "--log", Log(folder)]);
        }
        catch (InvalidOperationException failed) when (File.Exists(Log(folder)))
        {
            var log = await File.ReadAllTextAsync(Log(folder));
            throw new InvalidOperationException($"{failed.Message} The server says:\n{log}", failed);
        }
    }

    /// <summary>Stops at once: what it holds is about to be thrown away.</summary>
    private static async Task Stop(Installation installation, string folder)
    {
        if (File.Exists(Path.Combine(Data(folder), "postmaster.pid")))
        {
            await ServerUser.Try(
                installation.PgCtl, ["stop", "--silent", "--mode", "immediate", "--pgdata", Data(folder)]);
        }
    }
}
