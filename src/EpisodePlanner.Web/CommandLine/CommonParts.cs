using System.CommandLine;
using EpisodePlanner.Planning;

namespace EpisodePlanner.Web.CommandLine;

/// <summary>Parts that commands share.</summary>
internal static class CommonParts
{
    private const int MostNamed = 8;

    /// <summary>The workshop file.</summary>
    public static Argument<string> File() => new("FILE") { Description = "The workshop file, JSON in UTF-8" };

    /// <summary>An episode to come.</summary>
    public static Option<string> Episode(bool required = true) => new("--episode")
    {
        HelpName = "ID",
        Description = "The episode's id, as in the file or in the plan",
        Required = required,
    };

    /// <summary>There is no such episode; which there are.</summary>
    public static Reason NoEpisode(Plan plan, string typed)
    {
        var known = plan.Episodes.Select(e => $"'{e.Id}'").ToList();
        return new Reason(
            "--episode",
            known.Count == 0
                ? $"There is no episode '{typed}' to come, and no other."
                : $"There is no episode '{typed}' to come; there are {string.Join(", ", known.Take(MostNamed))}{(known.Count > MostNamed ? " and more" : "")}.");
    }
}

/// <summary>Says what is missing where a workshop has nothing to plan.</summary>
internal static class Emptiness
{
    public static Reason? Problem(Workshop workshop) => workshop.Series.Count > 0 || workshop.Tasks.Count > 0
        ? null
        : new Reason(
            "$.series",
            "There is nothing to plan yet. Type first: a series with its name and a few lines of work, as in "
            + "\"series\": [{ \"name\": \"Rail Trolley\", \"work\": [\"weld frame, 12 h\", \"wire, 8 h\"] }]; then its last upload, "
            + "the evenings you are free and the day you publish.");
}

/// <summary>Picks from a plan what can never be done.</summary>
internal static class Impossible
{
    public static IReadOnlyList<Reason> In(Plan plan) => [.. plan.Findings
        .Where(finding => finding.Kind == FindingKind.Impossible)
        .Select(finding => new Reason(finding.Where, finding.Says))];
}
