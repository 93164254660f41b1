namespace EpisodePlanner.Planning;

/// <summary>Something taken for granted and how to put another answer in its place.</summary>
/// <param name="Assumption">What was assumed; not measured yet.</param>
/// <param name="Change">Puts the other answer in; null where it can't be tried.</param>
internal sealed record Trial(Assumption Assumption, Func<Workshop, Workshop>? Change)
{
    public static Trial Of(
        string name, string where, string says, string ask, string tried, Func<Workshop, Workshop>? change) =>
        new(new Assumption(name, where, says, ask, null, tried), change);

    public static Trial OfSettings(
        string name, string member, string says, string ask, string tried, Func<Settings, Settings> change) =>
        Of(name, $"$.settings.{member}", says, ask, tried, workshop => workshop with { Settings = change(workshop.Settings) });
}

/// <summary>Collects the defaults that a plan really used.</summary>
internal static class Trials
{
    public static IReadOnlyList<Trial> Of(Plan plan)
    {
        IEnumerable<Trial?> all =
        [
            .. PublishingTrials.Of(plan),
            .. WorkTrials.Of(plan),
            .. StoryTrials.Of(plan),
        ];
        return [.. all.OfType<Trial>()];
    }

    /// <summary>Names in a row, the first few of many.</summary>
    public static string Row(IReadOnlyCollection<string> names) => names.Count <= 3
        ? string.Join(", ", names)
        : $"{string.Join(", ", names.Take(2))} and {names.Count - 2} more";
}
