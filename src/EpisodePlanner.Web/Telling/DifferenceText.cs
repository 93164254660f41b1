using EpisodePlanner.Planning;

namespace EpisodePlanner.Web.Telling;

/// <summary>What is supposed beside the real plan, for a terminal.</summary>
internal static class DifferenceText
{
    private const int MostStarts = 10;

    /// <summary>One supposition.</summary>
    /// <param name="page">Where it is written.</param>
    /// <param name="name">What is supposed.</param>
    /// <param name="difference">What differs.</param>
    public static void Write(ISheet page, string name, PlanDifference difference)
    {
        page.Heading($"Suppose: {name}");
        if (difference.IsSame)
        {
            page.Paragraph("Nothing differs from the plan: no upload, no silence, no start of the next seven days.");
        }

        foreach (var group in new DifferenceRows(difference).All().GroupBy(row => row.Group))
        {
            page.Paragraph($"{DifferenceRows.Heading(group.Key)}:");
            foreach (var row in group.Take(group.Key == DifferenceGroup.NextSevenDays ? MostStarts : int.MaxValue))
            {
                page.Item(Say(row));
            }

            if (group.Key == DifferenceGroup.NextSevenDays && group.Count() is var count and > MostStarts)
            {
                page.Item($"and {count - MostStarts} more.");
            }
        }
    }

    /// <summary>"“First ride” (Ferry): Fri 12 Mar instead of Fri 5 Mar, 7 days later."</summary>
    public static string Say(DifferenceRow row) => row.Before.Length == 0
        ? $"{row.What}: {row.Then}"
        : $"{row.What}: {row.Then} instead of {row.Before}{(row.By.Length > 0 ? $", {row.By}" : "")}.";
}
