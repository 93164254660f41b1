using System.Net;
using EpisodePlanner.Web.Serving;
using Microsoft.AspNetCore.Server.Kestrel.Core;

namespace EpisodePlanner.Web.Composition;

/// <summary>Where and how the web server listens.</summary>
internal static class Kestrel
{
    /// <summary>Limits that hold before any of our own code sees a request; what breaks them is answered without a body.</summary>
    public static void ListenOn(this IWebHostBuilder host, ServerSettings settings) => host
        .UseKestrelCore()
        .ConfigureKestrel(kestrel =>
        {
            kestrel.AddServerHeader = false;
            Limit(kestrel.Limits);
            foreach (var address in settings.Addresses)
            {
                Listen(kestrel, address);
            }
        });

    private static void Limit(KestrelServerLimits limits)
    {
        limits.MaxRequestBodySize = BodyLimits.Usual;
        limits.MaxRequestLineSize = 8 * 1_024;
        limits.MaxRequestHeadersTotalSize = 16 * 1_024;
        limits.MaxRequestHeaderCount = 64;
        limits.RequestHeadersTimeout = TimeSpan.FromSeconds(10);
        limits.MaxConcurrentConnections = 1_000;
    }

    private static void Listen(KestrelServerOptions kestrel, ListenAddress address)
    {
        if (address.Address is { } ip)
        {
            kestrel.Listen(ip, address.Port);
        }
        else if (address.Port == 0)
        {
            // A free port can't be free for two families at once.
            kestrel.Listen(IPAddress.Loopback, 0);
        }
        else
        {
            kestrel.ListenLocalhost(address.Port);
        }
    }
}
