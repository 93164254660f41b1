namespace EpisodePlanner.Planning;

/// <summary>
/// When an episode of one series would be ready if the series were cut otherwise, guessed from a plan: the work of the
/// milestones stays where it is, and every tail more or less before it moves it by the tail's length in minutes with
/// somebody present. A cut that stays where it is, after as many episodes as before, stays as planned.
/// </summary>
internal sealed class ReadyGuess
{
    private readonly PlanDraft draft;
    private readonly StoryLine line;
    private readonly int tail;
    private readonly int lead;
    private readonly int[] finished;
    private readonly int[] available;
    private readonly int[] cutsBefore;

    /// <summary>Prepares the guesses for a series.</summary>
    /// <param name="drafted">The plan.</param>
    /// <param name="done">By milestone: when the work that leads to it is done.</param>
    /// <param name="line">The series, as the plan has cut it.</param>
    public ReadyGuess(DraftedPlan drafted, IReadOnlyDictionary<Id, int> done, StoryLine line)
    {
        (draft, this.line) = (drafted.Draft, line);
        var workshop = draft.Workshop;
        tail = (int)Math.Ceiling(Tails.Of(workshop, null).Sum(part => part.Hours) * 60);
        lead = (int)Math.Ceiling(((workshop.Settings.SafetyLeadHours ?? 0) + (workshop.Settings.EarlyViewHours ?? 0)) * 60);
        finished = Finished(done);
        (available, cutsBefore) = Planned(drafted.Plan);
    }

    /// <summary>When an episode may be public at the earliest.</summary>
    /// <param name="episodesBefore">Episodes of the series to come before it.</param>
    /// <param name="last">The unit it ends with.</param>
    /// <returns>Minutes from planning; −1 for never.</returns>
    public int AvailableFrom(int episodesBefore, int last)
    {
        var more = (episodesBefore - cutsBefore[last]) * tail;
        if (available[last] >= 0)
        {
            return more == 0 ? available[last] : Moved(available[last] - lead, more);
        }

        return finished[last] < 0 ? -1 : Moved(finished[last], more + tail);
    }

    /// <summary>A minute moved on by minutes of presence, then by what must lie between ready and public.</summary>
    private int Moved(int minute, int more)
    {
        var presence = draft.Problem.Presence;
        var from = Math.Clamp(minute, 0, draft.Axis.Horizon);
        if (more >= 0)
        {
            return presence.Finish(from, more) is { } finish ? finish + lead : -1;
        }

        return Math.Max(0, presence.LatestStart(from, -more) ?? 0) + lead;
    }

    /// <summary>By milestone with work left: when that is done; <see cref="int.MaxValue"/> for never.</summary>
    public static Dictionary<Id, int> Done(Plan plan)
    {
        var (done, tasks) = (new Dictionary<Id, int>(), plan.Request.Workshop.Tasks);
        foreach (var stage in plan.Stages.Where(stage => !stage.Key.IsTail))
        {
            if (tasks.Find(stage.Key.Task)?.Milestone is { } milestone)
            {
                var finish = plan.Schedule.IsPlaced(stage.Index) ? plan.Schedule.Finish(stage.Index) : int.MaxValue;
                done[milestone] = Math.Max(done.GetValueOrDefault(milestone), finish);
            }
        }

        return done;
    }

    /// <summary>By unit: when all work up to it is done; −1 for never.</summary>
    private int[] Finished(IReadOnlyDictionary<Id, int> done)
    {
        var (last, all) = (0, new int[line.Units.Count]);
        for (var unit = 0; unit < all.Length; unit++)
        {
            last = Math.Max(last, line.Units[unit].Milestones.Select(m => done.GetValueOrDefault(m.Id)).DefaultIfEmpty(0).Max());
            all[unit] = last == int.MaxValue ? -1 : last;
        }

        return all;
    }

    /// <summary>By unit: when the episode that ends with it may be public in the plan, −1 where none does; and how many end before.</summary>
    private (int[] Available, int[] CutsBefore) Planned(Plan plan)
    {
        var finishes = plan.Schedule.Finishes();
        var rows = draft.Episodes.Episodes.Where(row => row.Upcoming.Series.Id == line.Series.Id).ToList();
        var (when, before, count) = (new int[line.Units.Count], new int[line.Units.Count], 0);
        for (var unit = 0; unit < when.Length; unit++)
        {
            before[unit] = count;
            when[unit] = -1;
            if (line.Now.EndsAfter[unit])
            {
                when[unit] = count < rows.Count ? SlotSweep.AvailableFrom(rows[count], finishes) : -1;
                count++;
            }
        }

        return (when, before);
    }
}
