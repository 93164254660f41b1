namespace EpisodePlanner.Planning.Files.WorkLines;

/// <summary>One line of work, understood.</summary>
/// <param name="Name">The work in words: "weld frame".</param>
/// <param name="Hours">Its likely length.</param>
/// <param name="After">What it waits for, by name or id; where empty, the line above.</param>
internal sealed record WorkLine(string Name, decimal Hours, ValueList<string> After)
{
    /// <summary>The kind of work, guessed from the first verb.</summary>
    public WorkKind Kind => WorkVerbs.KindOf(Name);
}
