using System.Net.Sockets;
using EpisodePlanner.Planning;
using EpisodePlanner.Web.Composition;
using Microsoft.AspNetCore.Connections;

namespace EpisodePlanner.Web.CommandLine;

/// <summary>Starts a server, and says why it can't listen.</summary>
internal static class Listening
{
    /// <summary>Starts it.</summary>
    /// <returns>Why it can't listen; null where it does.</returns>
    public static async Task<Reason?> Start(WebApplication app, ServerSettings settings, CancellationToken stop)
    {
        try
        {
            await app.StartAsync(stop).ConfigureAwait(false);
            return null;
        }
        catch (IOException e) when (e.InnerException is AddressInUseException)
        {
            return Refuse($"{settings.Addresses} is taken: another program listens there. Stop that, or choose another port, as in http://127.0.0.1:5081.");
        }
        catch (Exception e) when (e is SocketException or IOException { InnerException: SocketException })
        {
            return Refuse(((e as SocketException) ?? (SocketException)e.InnerException!).SocketErrorCode switch
            {
                SocketError.AccessDenied =>
                    $"This user may not listen at {settings.Addresses}; choose a port above 1023, as in http://127.0.0.1:5080.",
                SocketError.AddressNotAvailable =>
                    $"{settings.Addresses} is no address of this machine; write one of its own, or 127.0.0.1.",
                var other => $"It can't listen at {settings.Addresses} ({other}); choose another address.",
            });
        }
    }

    private static Reason Refuse(string says) => new(SettingsTable.Urls.Name, says);
}
