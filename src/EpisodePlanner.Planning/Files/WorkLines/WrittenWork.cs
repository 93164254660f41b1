using System.Globalization;
using System.Text.RegularExpressions;
using EpisodePlanner.Planning.Files.WorkLines;

namespace EpisodePlanner.Planning.Files;

/// <summary>Work written as on paper, for a workshop that exists: the change that adds it, or what is not understood.</summary>
/// <param name="Change">The series with a milestone for each line, and the tasks; null where something is not understood.</param>
/// <param name="Problems">What is not understood, by line.</param>
public sealed partial record WrittenWork(Change? Change, ValueList<WorkLineProblem> Problems)
{
    /// <summary>
    /// Understands lines such as "weld frame, 12 h, after cutting". Each becomes a milestone at the end of the story and a
    /// task that follows the line above, or what it names. Rules between things are left to <see cref="Changes.Apply"/>.
    /// </summary>
    /// <param name="workshop">The workshop.</param>
    /// <param name="series">The series the work is for, as it is or as it is to be added.</param>
    /// <param name="lines">The lines; empty ones are left out.</param>
    public static WrittenWork Understand(Workshop workshop, Series series, IEnumerable<string> lines)
    {
        var numbered = lines.Select((text, i) => (Text: text.Trim(), Number: i + 1)).Where(line => line.Text.Length > 0).ToList();
        var reading = new Reading();
        var written = workshop with { Series = workshop.Series.With(series with { Work = [.. numbered.Select(line => line.Text)] }) };
        var expanded = WorkLineExpansion.Expand(written, reading, new Origins(reading));
        return reading.Count > 0
            ? new WrittenWork(null, reading.Reasons().Select(reason => Problem(reason, numbered)).ToValueList())
            : new WrittenWork(Differences.Between(workshop, expanded), []);
    }

    private static WorkLineProblem Problem(Reason reason, List<(string Text, int Number)> lines)
    {
        var match = Line().Match(reason.Where);
        return match.Success && int.Parse(match.Groups["at"].ValueSpan, CultureInfo.InvariantCulture) is var at && at < lines.Count
            ? new WorkLineProblem(lines[at].Number, lines[at].Text, reason.Says)
            : new WorkLineProblem(0, "", reason.Says);
    }

    [GeneratedRegex(@"\.work\[(?<at>[0-9]{1,6})\]$")]
    private static partial Regex Line();
}

/// <summary>A line that is not understood.</summary>
/// <param name="Line">Its number, from 1; 0 where none is meant alone.</param>
/// <param name="Text">The line.</param>
/// <param name="Says">What is wrong and what would be right.</param>
public sealed record WorkLineProblem(int Line, string Text, string Says);
