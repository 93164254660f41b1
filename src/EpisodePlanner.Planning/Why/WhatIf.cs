using NodaTime;

namespace EpisodePlanner.Planning;

/// <summary>What sort of difference is tried.</summary>
public enum WhatIfKind
{
    /// <summary>One station more of a kind that is there.</summary>
    OneMore,

    /// <summary>A person, a machine or a place open on a day that is closed.</summary>
    OpenDay,

    /// <summary>Work, a run or a wait that takes a day less.</summary>
    ShorterByADay,

    /// <summary>A run that may go on with nobody there.</summary>
    RunsAlone,

    /// <summary>Another rule for publishing.</summary>
    Publishing,
}

/// <summary>A difference that could be made.</summary>
/// <param name="Kind">Of what sort.</param>
/// <param name="Says">In words: "one more Tall Printer".</param>
/// <param name="Change">The change to the workshop.</param>
public sealed record WhatIfIdea(WhatIfKind Kind, string Says, Change Change)
{
    /// <summary>What to mind where the difference could hurt somebody.</summary>
    public ValueList<Caution> Cautions { get; init; } = [];
}

/// <summary>A difference that was tried for one episode, with what it came to.</summary>
public sealed record WhatIf
{
    /// <summary>What was tried.</summary>
    public required WhatIfIdea Idea { get; init; }

    /// <summary>The day of the upload then; null where it has none.</summary>
    public required LocalDate? Date { get; init; }

    /// <summary>When the episode is ready then, or null.</summary>
    public required Instant? Ready { get; init; }

    /// <summary>Days by which the upload is earlier, negative for later; null where it has no day before or then.</summary>
    public required int? DaysWon { get; init; }

    /// <summary>Minutes by which the episode is ready earlier, negative for later; null where it is never ready before or then.</summary>
    public required int? MinutesWon { get; init; }

    /// <summary>The other uploads that move.</summary>
    public required ValueList<UploadMove> Others { get; init; }

    /// <summary>Whether the episode, which had no day, has one then, or an earlier one.</summary>
    public bool Helps => DaysWon is null ? Date is not null && MinutesWon is null : DaysWon > 0;

    /// <summary>Tries ideas by planning again: the most days won first, then the most minutes.</summary>
    internal static ValueList<WhatIf> Try(
        Plan plan, PlannedEpisode episode, IReadOnlyList<WhatIfIdea> ideas, SharedProgress progress, CancellationToken stop)
    {
        var tried = new List<WhatIf>();
        foreach (var idea in ideas)
        {
            var replanned = Replanning.After(plan, idea.Change, stop);
            if (stop.IsCancellationRequested)
            {
                break;
            }

            if (replanned is { } after)
            {
                tried.Add(Of(plan, after, episode, idea));
            }

            progress.Step();
        }

        return tried.OrderByDescending(tried => tried.Helps)
            .ThenByDescending(tried => tried.DaysWon ?? 0)
            .ThenByDescending(tried => tried.MinutesWon ?? 0)
            .ToValueList();
    }

    private static WhatIf Of(Plan before, Plan after, PlannedEpisode episode, WhatIfIdea idea)
    {
        var then = after.Episodes.FirstOrDefault(e => e.Id == episode.Id);
        return new WhatIf
        {
            Idea = idea,
            Date = then?.Date,
            Ready = then?.Ready,
            DaysWon = (episode.Date, then?.Date) is ({ } from, { } to) ? Period.DaysBetween(to, from) : null,
            MinutesWon = (episode.Ready, then?.Ready) is ({ } was, { } shall) ? (int)(was - shall).TotalMinutes : null,
            Others = UploadMoves.Between(before, after).Where(move => move.Episode != episode.Id).ToValueList(),
        };
    }
}
