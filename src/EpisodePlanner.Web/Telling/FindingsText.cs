using EpisodePlanner.Planning;

namespace EpisodePlanner.Web.Telling;

/// <summary>What the plan has to say besides; what can never be done is told on the error output instead.</summary>
internal static class FindingsText
{
    public static void Write(ISheet page, Plan plan)
    {
        Write(page, plan, FindingKind.Missed, "What the plan does not keep");
        Write(page, plan, FindingKind.Note, "Worth knowing");
        Write(page, plan, FindingKind.NoEffect, "In the file, without effect on dates yet");
    }

    private static void Write(ISheet page, Plan plan, FindingKind kind, string heading)
    {
        var findings = plan.Findings.Where(finding => finding.Kind == kind).ToList();
        if (findings.Count == 0)
        {
            return;
        }

        page.Heading(heading);
        foreach (var finding in findings)
        {
            page.Item(finding.Says);
        }
    }
}
