using System.Globalization;
using EpisodePlanner.Planning;

namespace EpisodePlanner.Web.Telling;

/// <summary>Proposals for a story in words that a line and a table share.</summary>
internal sealed class StoryWords(Plan plan)
{
    private const int MostUploads = 6;

    /// <summary>How things of the plan are called.</summary>
    public PlanNames Names { get; } = new(plan);

    /// <summary>"at most 4 days beyond the promise instead of 11", or what else it comes to.</summary>
    public static string Wins(StoryProposal proposal)
    {
        var (worst, all) = (proposal.WorstOver, proposal.DaysOver);
        var promise = proposal.Series is null ? "a promise" : "the promise";
        return worst switch
        {
            (0, 0) => proposal.Series is null ? "every promise holds as before" : "the promise holds as before",
            ( > 0, 0) => proposal.Series is null ? "every promise holds" : "the promise holds",
            var (before, then) when before != then => $"at most {Words.Days(then)} beyond {promise} instead of {before}",
            _ when all.Before > all.Then => $"{Words.Days(all.Before - all.Then)} fewer beyond {promise}, all silences together",
            _ when all.Before < all.Then => $"{Words.Days(all.Then - all.Before)} more beyond {promise}, all silences together",
            _ => $"as many days beyond {promise} as now",
        };
    }

    /// <summary>"16 h more work; the last upload 6 days later; later: ...", or that it costs nothing.</summary>
    public static string Costs(StoryProposal proposal)
    {
        var parts = new List<string>();
        if (proposal.Difference.HoursMore != 0)
        {
            parts.Add($"{Hours(Math.Abs(proposal.Difference.HoursMore))} {(proposal.Difference.HoursMore > 0 ? "more" : "less")} work");
        }

        var own = proposal.Difference.Outlooks.FirstOrDefault(change => proposal.Series is not null && change.Before.Series == proposal.Series);
        if (own?.FinaleLater is { } days and not 0)
        {
            parts.Add($"the last upload of {own.Before.Name} {Words.Days(Math.Abs(days))} {(days > 0 ? "later" : "earlier")}");
        }

        var told = own is null ? null : own.FinaleBefore;
        var later = proposal.Difference.Moved.Where(move => move.IsLater && !(move.Series == proposal.Series && move.From == told)).ToList();
        if (later.Count > 0)
        {
            parts.Add($"later: {WhyWords.Moves(later)}");
        }

        return parts.Count == 0 ? "no hours, and nothing later" : string.Join("; ", parts);
    }

    /// <summary>The uploads that a series has then: "Fri 19 Mar (13 days), Sat 3 Apr (15 days)".</summary>
    public string Uploads(Outlook outlook)
    {
        var closed = outlook.Forecast.Where(silence => silence.To is not null).ToList();
        var told = closed.Take(MostUploads).Select(silence => $"{Names.ShortDay(silence.To!.Value)} ({Silent(outlook, silence)})");
        var more = closed.Count > MostUploads ? $" and {closed.Count - MostUploads} more" : "";
        return closed.Count == 0 ? "nothing is out" : $"{string.Join(", ", told)}{more}";
    }

    /// <summary>"could end here: Fri 19 Mar": when an episode that ended with a milestone would be out.</summary>
    public string EndsOn(CutPlace place)
    {
        var then = place.Proposal!.Then.Episodes.FirstOrDefault(episode => episode.Milestones.Count > 0 && episode.Milestones[^1] == place.Milestone.Id);
        return then?.Date is { } day ? $"could end here: {Names.ShortDay(day)}" : "could end here";
    }

    /// <summary>Which proposal it is, as a sentence begins.</summary>
    public string Says(StoryProposal proposal) => proposal.Move switch
    {
        StoryMove.Together => "If the stories are cut otherwise",
        StoryMove.TogetherHeld => $"If, besides, {Held(proposal)}",
        _ => $"If {proposal.Says}",
    };

    /// <summary>The cuts that a proposal for all series comes to: by series, the milestones with which episodes end then.</summary>
    public IEnumerable<string> Cuts(StoryProposal proposal) => proposal.Difference.Outlooks
        .Where(change => change.Then.Series != default)
        .Select(change => $"{change.Then.Name}: {Uploads(change.Then)}");

    /// <summary>What there is time for before the last slot within a promise.</summary>
    public string Says(LastSlot last)
    {
        var name = Names.Series(last.Series);
        if (last.Slot is not { } slot)
        {
            return $"{name} has no slot left within its promise, which ends {Names.Day(last.DueBy)}.";
        }

        var begins = $"The last slot of {name} within its promise is {Names.Day(slot.LocalOpening.Date)}";
        if (last.OpenMinutes == 0)
        {
            return $"{begins}, and no free hands are left before it.";
        }

        var hours = $"{begins}; there are {Words.Minutes(last.OpenMinutes)} of free hands before it";
        return last.MinutesToFind == 0
            ? $"{hours}. An episode's finish takes {Words.Minutes(last.TailMinutes)}."
            : $"{hours}: an episode of at most {Words.Minutes(last.OpenMinutes)} would hold, or {Words.Minutes(last.MinutesToFind)} more must be found.";
    }

    /// <summary>How far the search went.</summary>
    public static string Tried(StoryAnswer answer) => answer.IsWhole
        ? $"Every way to cut that is open was planned: {answer.Made + 1}."
        : $"{answer.Made + 1} ways to cut were planned; there are more.";

    private static string Hours(decimal hours) => Words.Work((int)Math.Round(hours * 60));

    private static string Silent(Outlook outlook, Silence silence)
    {
        var over = outlook.Promise.LongestSilenceDays is { } longest ? PromiseKeeping.Beyond(silence, longest) : 0;
        return over == 0
            ? Words.Days(silence.Days)
            : string.Create(CultureInfo.InvariantCulture, $"{Words.Days(silence.Days)}, {over} beyond");
    }

    private string Held(StoryProposal proposal)
    {
        var held = proposal.Then.Request.Workshop.Episodes
            .Where(episode => episode.PinnedSlot is not null && plan.Request.Workshop.Episodes.Find(episode.Id)?.PinnedSlot != episode.PinnedSlot)
            .Select(episode => $"{PlanNames.Quote(episode.Title)} waits for {Names.ShortDay(episode.PinnedSlot!.Value.Date)}");
        return string.Join(" and ", held);
    }
}
