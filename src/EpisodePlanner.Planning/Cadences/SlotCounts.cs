namespace EpisodePlanner.Planning;

/// <summary>Turns days of silence into slots, on the slots that a channel really has.</summary>
internal sealed class SlotCounts
{
    private const int Year = 366;
    private readonly int[] days;

    /// <summary>The slots of the coming year, thinned to the least days between uploads.</summary>
    public SlotCounts(Plan plan)
    {
        var axis = new TimeAxis(plan.Request.PlannedAt, plan.Zone, Year * 1440);
        var settings = plan.Request.Workshop.Settings;
        var apart = Math.Max(1, settings.DaysBetweenUploads ?? 0);
        var found = new List<int>();
        foreach (var window in SlotWindows.Of(PlanDraft.SlotRulesOf(plan.Request.Workshop), settings.DaysToAvoid, axis))
        {
            var day = SilencePenalty.DayNumber(window.LocalOpening.Date);
            if (found.Count == 0 || day >= found[^1] + apart)
            {
                found.Add(day);
            }
        }

        days = [.. found];
    }

    /// <summary>How many slots there are in the coming year.</summary>
    public int Count => days.Length;

    /// <summary>
    /// The most slots such that from each slot to that many later never more than so many days pass: with one of any so
    /// many in a row a promise of these days holds. 0 where two slots may be further apart than that.
    /// </summary>
    public int Within(int longest)
    {
        var least = days.Length;
        for (int from = 0, to = 0; from < days.Length; from++)
        {
            while (to + 1 < days.Length && days[to + 1] - days[from] <= longest)
            {
                to++;
            }

            // Near the end of the year the slots after it are not known.
            if (days[^1] - days[from] >= longest)
            {
                least = Math.Min(least, to - from);
            }
        }

        return days.Length < 2 ? 0 : least;
    }

    /// <summary>The least days, at least as many as given, within which so many slots always come.</summary>
    public int DaysFor(int count, int atLeast)
    {
        var longest = atLeast;
        for (var from = 0; from + count < days.Length; from++)
        {
            longest = Math.Max(longest, days[from + count] - days[from]);
        }

        return longest;
    }
}
