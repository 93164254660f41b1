using System.Text.Json.Nodes;
using EpisodePlanner.Planning.Files.Text;

namespace EpisodePlanner.Planning.Files;

/// <summary>One step from a format of the file to the next.</summary>
/// <param name="From">The format it starts from.</param>
/// <param name="Upgrade">
/// Changes a document of that format into the next one; the number is changed by the caller. It leaves what it does not
/// recognise as it is: the document has not been checked yet.
/// </param>
public sealed record FormatStep(int From, Action<JsonObject> Upgrade);

/// <summary>The formats that can be read, and the way from each older one to <see cref="Workshop.CurrentFormat"/>.</summary>
public sealed class FormatSteps
{
    private readonly IReadOnlyList<FormatStep> steps;

    /// <summary>An unbroken row of steps, oldest first, the last one into the current format.</summary>
    /// <exception cref="ArgumentException">A step is missing or out of order.</exception>
    public FormatSteps(IReadOnlyList<FormatStep> steps)
    {
        this.steps = steps;
        for (var i = 0; i < steps.Count; i++)
        {
            if (steps[i].From != Oldest + i)
            {
                throw new ArgumentException("The steps must be an unbroken row up to the current format.", nameof(steps));
            }
        }
    }

    /// <summary>The steps of the formats there have been.</summary>
    public static FormatSteps Known { get; } = new([]);

    /// <summary>The oldest format that can be read.</summary>
    public int Oldest => Workshop.CurrentFormat - steps.Count;

    /// <summary>Whether a format can be read.</summary>
    public bool CanRead(int format) => format >= Oldest && format <= Workshop.CurrentFormat;

    /// <summary>The formats that can be read, in words.</summary>
    public string InWords => steps.Count == 0
        ? $"{Workshop.CurrentFormat} is the one that can be read"
        : $"{Say.Row(steps.Select(step => $"{step.From}"))} and {Workshop.CurrentFormat} can be read";

    /// <summary>Brings a document up to the current format.</summary>
    internal void Upgrade(JsonObject root, int format)
    {
        foreach (var step in steps.Skip(format - Oldest))
        {
            step.Upgrade(root);
            root["format"] = step.From + 1;
        }
    }
}
