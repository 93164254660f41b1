using System.Net;
using EpisodePlanner.Planning;

namespace EpisodePlanner.Web.Serving;

/// <summary>The names a server answers for: loopback's own, and those that its settings list.</summary>
/// <param name="listed">Names, IP addresses, or patterns such as "*.shed.example", which stand for every name below.</param>
public sealed class HostNames(ValueList<string> listed)
{
    private const string Below = "*.";

    /// <summary>Whether a text can stand in the list.</summary>
    public static bool IsPattern(string text)
    {
        var name = text.StartsWith(Below, StringComparison.Ordinal) ? text[Below.Length..] : text;
        return Uri.CheckHostName(name) is not UriHostNameType.Unknown;
    }

    /// <summary>Whether the server answers for a host, named as in the header Host, its port aside.</summary>
    public bool Include(HostString host)
    {
        var name = host.Host;
        return name.Equals("localhost", StringComparison.OrdinalIgnoreCase)
            || (IPAddress.TryParse(name.Trim('[', ']'), out var address) && IPAddress.IsLoopback(address))
            || listed.Any(pattern => Matches(name, pattern));
    }

    private static bool Matches(string name, string pattern) => pattern.StartsWith(Below, StringComparison.Ordinal)
        ? name.EndsWith(pattern[1..], StringComparison.OrdinalIgnoreCase) && name.Length > pattern.Length - 1
        : name.Trim('[', ']').Equals(pattern.Trim('[', ']'), StringComparison.OrdinalIgnoreCase);
}
