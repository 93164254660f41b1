using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Checking;

/// <summary>Attended work: all of it, in open hours, in stretches that are long enough.</summary>
internal static class AttendedRules
{
    public static void Check(Findings findings, int stage)
    {
        var about = findings.Problem.Stages[stage];
        var parts = findings.Schedule.Parts(stage);
        var left = about.Minutes;
        for (var i = 0; i < parts.Length; i++)
        {
            var length = parts[i].End - parts[i].Start;
            CheckLength(findings, stage, parts, i, left);
            left -= length;
            if (length > 0)
                CheckHours(findings, stage, parts[i]);
        }

        if (left != 0)
            findings.Add(stage, $"works {about.Minutes - left} minutes instead of {about.Minutes}");
    }

    private static void CheckLength(Findings findings, int stage, ReadOnlySpan<SchedulePart> parts, int index, int left)
    {
        var about = findings.Problem.Stages[stage];
        var part = parts[index];
        var length = part.End - part.Start;
        if (length < Math.Min(about.MinimumBlock, left))
            findings.Add(stage, $"works only {length} minutes from {part.Start}, less than its minimum block");
        else if (length == 0 && (about.Minutes > 0 || parts.Length > 1))
            findings.Add(stage, $"has an empty part at {part.Start}");

        if (index > 0 && parts[index - 1].End == part.Start)
            findings.Add(stage, $"has two parts that touch at {part.Start}");
    }

    private static void CheckHours(Findings findings, int stage, SchedulePart part)
    {
        var mode = findings.Problem.Stages[stage].Modes[part.Mode];
        findings.NeedOpen(stage, "works", new Stretch(part.Start, part.End), mode.Stations, mode.Limits);
    }
}
