using System.Net;

namespace EpisodePlanner.Web.Composition;

/// <summary>Where a server listens.</summary>
/// <param name="Host">A name, an IP address, or "*" for every network of the machine.</param>
/// <param name="Port">The port; 0 for any that is free.</param>
public sealed record ListenAddress(string Host, int Port)
{
    /// <summary>This machine alone.</summary>
    public static ListenAddress Default { get; } = new("127.0.0.1", 5080);

    /// <summary>The host as an IP address; null for a name.</summary>
    public IPAddress? Address => Host == "*" ? IPAddress.IPv6Any
        : IPAddress.TryParse(Host.Trim('[', ']'), out var address) ? address
        : null;

    /// <summary>Whether every network of the machine is meant, so that the host is no name anybody calls it by.</summary>
    public bool IsEverywhere => Address is { } address && (address.Equals(IPAddress.Any) || address.Equals(IPAddress.IPv6Any));

    /// <summary>Reads "http://127.0.0.1:5080"; null where it is no such address.</summary>
    public static ListenAddress? Parse(string text)
    {
        var everywhere = text.StartsWith("http://*:", StringComparison.Ordinal);
        var written = everywhere ? $"http://[::]:{text["http://*:".Length..]}" : text;
        return Uri.TryCreate(written, UriKind.Absolute, out var uri)
            && uri is { Scheme: "http", PathAndQuery: "/", UserInfo: "", Fragment: "" }
            && (uri.HostNameType is not UriHostNameType.Dns || uri.IdnHost == "localhost")
                ? new ListenAddress(everywhere ? "*" : uri.Host, uri.Port)
                : null;
    }

    /// <inheritdoc/>
    public override string ToString() => $"http://{Host}:{Port}";
}
