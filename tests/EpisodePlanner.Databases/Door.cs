using System.Net;
using System.Net.Sockets;
using Npgsql;

namespace EpisodePlanner.Databases;

/// <summary>
/// A door before a PostgreSQL: who goes through it meets a server that is there, that breaks off, that is away, and that
/// comes back at the same address, while the other tests keep theirs.
/// </summary>
public sealed class Door : IAsyncDisposable
{
    private readonly EndPoint behind;
    private readonly IPEndPoint address;
    private readonly List<Socket> through = [];
    private Socket? listener;
    private Task serving = Task.CompletedTask;

    /// <summary>Puts an open door before a database.</summary>
    public Door(ITestDatabase database)
    {
        var given = new NpgsqlConnectionStringBuilder(database.ConnectionString);
        behind = EndPointOf(given);
        listener = Listen(new IPEndPoint(IPAddress.Loopback, 0));
        address = (IPEndPoint)listener.LocalEndPoint!;
        serving = Serve(listener);
        (given.Host, given.Port) = ($"{address.Address}", address.Port);
        ConnectionString = given.ToString();
    }

    /// <summary>How to reach the database through the door.</summary>
    public string ConnectionString { get; }

    /// <summary>Cuts every connection and lets nobody in.</summary>
    public async Task Shut()
    {
        listener?.Dispose();
        listener = null;
        await serving;
        lock (through)
        {
            through.ForEach(socket => socket.Dispose());
            through.Clear();
        }
    }

    /// <summary>Lets in again.</summary>
    public void Open()
    {
        listener ??= Listen(address);
        serving = Serve(listener);
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync() => await Shut();

    private static EndPoint EndPointOf(NpgsqlConnectionStringBuilder given) =>
        given.Host is { } host && host.StartsWith('/')
            ? new UnixDomainSocketEndPoint(Path.Combine(host, $".s.PGSQL.{given.Port}"))
            : new DnsEndPoint(given.Host ?? "localhost", given.Port);

    private static Socket Listen(IPEndPoint at)
    {
        var socket = new Socket(AddressFamily.InterNetwork, SocketType.Stream, ProtocolType.Tcp);
        socket.Bind(at);
        socket.Listen();
        return socket;
    }

    private static async Task Pass(Socket from, Socket to)
    {
        var buffer = new byte[8192];
        try
        {
            for (int length; (length = await from.ReceiveAsync(buffer)) > 0;)
            {
                await to.SendAsync(buffer.AsMemory(0, length));
            }

            to.Shutdown(SocketShutdown.Send);
        }
        catch (Exception cut) when (cut is SocketException or ObjectDisposedException)
        {
            // Either side has gone, or the door was shut.
        }
    }

    private async Task Serve(Socket on)
    {
        try
        {
            while (true)
            {
                await LetIn(await on.AcceptAsync());
            }
        }
        catch (Exception shut) when (shut is SocketException or ObjectDisposedException)
        {
            // The door was shut.
        }
    }

    private async Task LetIn(Socket guest)
    {
        var host = behind is UnixDomainSocketEndPoint
            ? new Socket(AddressFamily.Unix, SocketType.Stream, ProtocolType.Unspecified)
            : new Socket(SocketType.Stream, ProtocolType.Tcp);
        lock (through)
        {
            through.AddRange([guest, host]);
        }

        await host.ConnectAsync(behind);
        _ = Pass(guest, host);
        _ = Pass(host, guest);
    }
}
