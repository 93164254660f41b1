using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Planning;

/// <summary>
/// Holds the bank against its target: how many episodes are finished and not out after each upload. The plan does not hold
/// uploads back for it; it says whether the target is met.
/// </summary>
internal static class BankFindings
{
    public static IEnumerable<Finding> Of(PlanDraft draft, BenchSchedule schedule, SlotSweep sweep)
    {
        if (draft.Workshop.Settings.BankTarget is not { } target || target == 0)
        {
            yield break;
        }

        var finishes = schedule.Finishes();
        var episodes = draft.Episodes.Episodes
            .Select((row, e) => (Ready: SlotSweep.AvailableFrom(row, finishes), Out: sweep.Minutes[e]))
            .Where(episode => episode.Ready >= 0)
            .ToList();
        var levels = episodes.Where(upload => upload.Out >= 0)
            .Select(upload => (upload.Out, Left: episodes.Count(other => other.Ready <= upload.Out && (other.Out < 0 || other.Out > upload.Out))))
            .OrderBy(level => level.Out)
            .ToList();
        if (levels.Count > 0)
        {
            yield return new Finding(FindingKind.Note, "$.settings.bankTarget", Says(draft, target, levels));
        }
    }

    private static string Says(PlanDraft draft, int target, List<(int Out, int Left)> levels)
    {
        var most = levels.MaxBy(level => level.Left);
        var met = levels.Count(level => level.Left >= target);
        var wanted = $"You want {Episodes(target)} in the bank";
        return met == 0
            ? $"{wanted}; by this plan never more than {Episodes(most.Left)} {(most.Left == 1 ? "is" : "are")} finished and not out after an upload."
            : $"{wanted}; by this plan so many are finished and not out after {met} of {levels.Count} uploads, first after that of "
                + $"{Words.Day(draft.Axis.DateOf(levels.First(level => level.Left >= target).Out))}.";
    }

    private static string Episodes(int count) => count == 1 ? "1 episode" : $"{count} episodes";
}
