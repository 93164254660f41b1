namespace EpisodePlanner.Planning;

/// <summary>Why something was refused: one sentence that says what is wrong and what would be right, with its place.</summary>
/// <param name="Where">
/// The place as a JSON path into the workshop: <c>$.tasks['weld-frame'].links[0].task</c>. A thing of the workshop is
/// named by its id in quotes; a file being read is named by position instead: <c>$.tasks[3].links[0].task</c>.
/// </param>
/// <param name="Says">The sentence, for people.</param>
public sealed record Reason(string Where, string Says)
{
    /// <inheritdoc/>
    public override string ToString() => $"{Where}: {Says}";
}
