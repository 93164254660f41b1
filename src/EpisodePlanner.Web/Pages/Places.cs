using System.Text.RegularExpressions;
using EpisodePlanner.Planning;

namespace EpisodePlanner.Web.Pages;

/// <summary>Finds the page on which something in the workshop is typed.</summary>
public static partial class Places
{
    /// <summary>The page for a place such as "$.tasks['weld-frame'].stages[0]"; the settings where none is nearer.</summary>
    /// <param name="where">A place, as in <see cref="Reason.Where"/>.</param>
    /// <param name="paths">The pages of the workshop.</param>
    public static string Of(string where, Paths paths)
    {
        var match = Thing().Match(where);
        return match.Success && ThingKinds.Find(match.Groups["kind"].Value) is { } kind
            ? OfThing(kind, match.Groups["id"].Value, paths)
            : OfSet(where, paths);
    }

    private static string OfThing(ThingKind kind, string id, Paths paths) =>
        Id.IsValid(id) ? paths.Edit(kind, new Id(id)) : paths.New(kind);

    private static string OfSet(string where, Paths paths) => Set().Match(where).Groups["kind"].Value switch
    {
        "people" or "machines" or "places" => paths.Stations,
        "series" or "tasks" or "episodes" or "uploads" or "log" => paths.Series,
        _ => paths.Settings,
    };

    [GeneratedRegex(@"^\$\.(?<kind>[a-zA-Z]+)\['(?<id>[^']*)'\]")]
    private static partial Regex Thing();

    [GeneratedRegex(@"^\$\.(?<kind>[a-zA-Z]+)")]
    private static partial Regex Set();
}
