namespace EpisodePlanner.Planning.Files.WorkLines;

/// <summary>Guesses the kind of work from the verb a line begins with, where that is obvious.</summary>
internal static class WorkVerbs
{
    private static readonly Dictionary<WorkKind, string> Verbs = new()
    {
        [WorkKind.Design] = "design draw model sketch calculate",
        [WorkKind.Print] = "print reprint",
        [WorkKind.Route] = "route",
        [WorkKind.LaserCut] = "laser lasercut",
        [WorkKind.Cut] = "cut saw trim",
        [WorkKind.Machine] = "machine mill turn drill tap bore",
        [WorkKind.Weld] = "weld tack braze",
        [WorkKind.Grind] = "grind sand file deburr",
        [WorkKind.Assemble] = "assemble mount bolt fit install attach",
        [WorkKind.Glue] = "glue laminate epoxy",
        [WorkKind.Paint] = "paint prime coat spray varnish",
        [WorkKind.Wire] = "wire crimp",
        [WorkKind.Solder] = "solder",
        [WorkKind.Code] = "code program",
        [WorkKind.Test] = "test try",
        [WorkKind.Ride] = "ride drive",
        [WorkKind.Film] = "film shoot",
        [WorkKind.Edit] = "edit",
        [WorkKind.Order] = "order buy",
        [WorkKind.Move] = "move",
    };

    private static readonly Dictionary<string, WorkKind> Kinds = Verbs
        .SelectMany(pair => pair.Value.Split(' ').Select(verb => (Verb: verb, Kind: pair.Key)))
        .ToDictionary(pair => pair.Verb, pair => pair.Kind, StringComparer.OrdinalIgnoreCase);

    /// <summary>The kind that the first word names, or <see cref="WorkKind.Other"/>.</summary>
    public static WorkKind KindOf(string name) =>
        Kinds.GetValueOrDefault(name.Split([' ', '-'], 2)[0], WorkKind.Other);
}
