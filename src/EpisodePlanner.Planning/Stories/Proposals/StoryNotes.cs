using System.Globalization;
using NodaTime;

namespace EpisodePlanner.Planning;

/// <summary>What no cut and no slot can do, said with the nearest that could.</summary>
internal static class StoryNotes
{
    private const int TenthsPerMilestone = 10_000;

    /// <summary>The notes for a draft and its lines.</summary>
    public static ValueList<Finding> Of(PlanDraft draft, IReadOnlyList<StoryLine> lines) =>
        Bounds(lines).Concat(RulesWithoutOccurrence(draft)).Concat(Promises(draft)).Concat(SameSlot(draft)).Concat(OutOfOrder(draft)).ToValueList();

    /// <summary>Bounds that no cut meets: how near the nearest comes.</summary>
    private static IEnumerable<Finding> Bounds(IReadOnlyList<StoryLine> lines)
    {
        foreach (var line in lines.Where(line => line.LeastMisfit > 0))
        {
            var minutes = line.LeastMisfit % TenthsPerMilestone / 10m;
            var over = minutes > 0 && line.Series.ScreenMinutes is { } bounds
                ? $"no way to cut it keeps every episode between {Number(bounds.Least)} and {Number(bounds.Most)} minutes on screen: "
                    + $"the nearest is out by {Number(minutes)} min altogether"
                : $"no way to cut it gives every episode {line.Series.FewestMilestones} milestones";
            yield return new Finding(
                FindingKind.Note,
                $"$.series['{line.Series.Id}'].screenMinutes",
                $"{line.Series.Name}: {over}. Cuts come as near as they can; wider bounds, or a payoff at another milestone, would allow them.");
        }
    }

    private static IEnumerable<Finding> RulesWithoutOccurrence(PlanDraft draft)
    {
        var used = draft.Slots.Select(slot => slot.Rule).ToHashSet();
        return PlanDraft.SlotRulesOf(draft.Workshop).Where(rule => !used.Contains(rule.Id)).Select(rule => new Finding(
            FindingKind.Note,
            $"$.slotRules['{rule.Id}']",
            $"The slot rule \u201c{rule.Rule}\u201d from {Words.Day(rule.From)} gives no slot up to {Words.Day(draft.Axis.DateOf(draft.Axis.Horizon))}: "
            + "an earlier first day, or fewer days left out, would."));
    }

    /// <summary>Promises that no upload rhythm on the slots there are can keep.</summary>
    private static IEnumerable<Finding> Promises(PlanDraft draft)
    {
        foreach (var row in draft.Episodes.Series.Where(row => row.Promise.LongestSilenceDays is not null))
        {
            var days = draft.Slots.Where(slot => slot.Admits(row.Series.Id)).Select(slot => slot.LocalOpening.Date).Distinct().Order().ToList();
            if (Furthest(days) is var (from, to) && Period.DaysBetween(from, to) is var apart && apart > row.LongestSilence)
            {
                yield return new Finding(
                    FindingKind.Note,
                    $"$.series['{row.Series.Id}'].promise",
                    $"{row.Series.Name} promises {Words.Days(row.LongestSilence)}, but its slots of {Words.Day(from)} and {Words.Day(to)} "
                    + $"are {Words.Days(apart)} apart: a promise of {Words.Days(apart)}, or a slot between them, could hold.");
            }
        }
    }

    /// <summary>The two days that follow each other at the greatest distance; null for fewer than two.</summary>
    private static (LocalDate From, LocalDate To)? Furthest(List<LocalDate> days) => days.Count < 2
        ? null
        : days.Zip(days.Skip(1), (from, to) => (From: from, To: to)).MaxBy(pair => Period.DaysBetween(pair.From, pair.To));

    private static IEnumerable<Finding> SameSlot(PlanDraft draft)
    {
        foreach (var group in Pinned(draft).GroupBy(row => row.PinnedOpening).Where(group => group.Count() > 1))
        {
            var titles = group.Select(row => $"\u201c{row.Upcoming.Episode.Title}\u201d").ToList();
            var free = draft.Slots.FirstOrDefault(slot => slot.Opening > group.Key && Pinned(draft).All(row => row.PinnedOpening != slot.Opening));
            yield return new Finding(
                FindingKind.Missed,
                Where(group.Last()),
                $"{string.Join(" and ", titles)} are pinned to one slot, {Words.Moment(draft.Axis.LocalOf(group.Key))}; one slot carries one episode"
                + (free is null ? "." : $": the next that nothing is pinned to is {Words.Moment(draft.Axis.LocalOf(free.Opening))}."));
        }
    }

    private static IEnumerable<Finding> OutOfOrder(PlanDraft draft)
    {
        foreach (var series in draft.Episodes.Series)
        {
            var rows = series.Episodes.Select(e => draft.Episodes.Episodes[e]).Where(row => row.PinnedOpening >= 0).ToList();
            foreach (var (first, second) in rows.Zip(rows.Skip(1)).Where(pair => pair.Second.PinnedOpening < pair.First.PinnedOpening))
            {
                var after = draft.Slots.FirstOrDefault(slot => slot.Opening > first.PinnedOpening && slot.Admits(series.Series.Id));
                yield return new Finding(
                    FindingKind.Missed,
                    Where(second),
                    $"\u201c{second.Upcoming.Episode.Title}\u201d is pinned to {Words.Moment(draft.Axis.LocalOf(second.PinnedOpening))}, before "
                    + $"\u201c{first.Upcoming.Episode.Title}\u201d, which the story tells first"
                    + (after is null ? "." : $": {Words.Moment(draft.Axis.LocalOf(after.Opening))} would be after it."));
            }
        }
    }

    private static IEnumerable<EpisodeRow> Pinned(PlanDraft draft) => draft.Episodes.Episodes.Where(row => row.PinnedOpening >= 0);

    private static string Where(EpisodeRow row) => $"$.episodes['{row.Upcoming.Episode.Id}'].pinnedSlot";

    private static string Number(decimal value) => value.ToString("0.#", CultureInfo.InvariantCulture);
}
