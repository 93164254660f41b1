namespace EpisodePlanner.Scheduling;

/// <summary>Why a stage does not start earlier; each can be relaxed alone.</summary>
public enum CauseKind
{
    /// <summary>It starts at minute 0: nothing holds it.</summary>
    Now,

    /// <summary>It was going on at minute 0.</summary>
    Begun,

    /// <summary>A stage it waits for. Relaxed: without that link.</summary>
    Predecessor,

    /// <summary>
    /// A stage that must follow it soon and can't earlier, so that it waits for that one. Relaxed: without the greatest lag
    /// of that link.
    /// </summary>
    GreatestLag,

    /// <summary>A station taken by another stage. Relaxed: as if that stage did not take that station.</summary>
    StationHeld,

    /// <summary>A station, or a limit, that is closed. Relaxed: open at all times.</summary>
    ClosedHours,

    /// <summary>Nobody is present. Relaxed: somebody always is.</summary>
    Presence,

    /// <summary>Earlier openings are shorter than the shortest stretch worth beginning. Relaxed: a minute is enough.</summary>
    MinimumBlock,

    /// <summary>Setting up and tidying do not fit before it. Relaxed: they take no time for this stage.</summary>
    SettingUp,

    /// <summary>A date before which it may not start. Relaxed: without the date.</summary>
    Date,

    /// <summary>The order that the maker accepted puts another stage first at a station. Relaxed: as a held station.</summary>
    AcceptedOrder,
}

/// <summary>One thing that holds a stage back.</summary>
/// <param name="Kind">What it is; says which of the others are used, −1 where not.</param>
/// <param name="Stage">The stage that is waited for, that must follow soon, or that holds the station.</param>
/// <param name="Station">The station that is held or closed.</param>
/// <param name="Link">The link to the stage waited for, or to the one that must follow soon; −1 where the stage follows it without a gap.</param>
/// <param name="Limit">The limit that is closed.</param>
public readonly record struct Blocker(CauseKind Kind, int Stage = -1, int Station = -1, int Link = -1, int Limit = -1);

/// <summary>
/// Why a stage starts when it does. With <paramref name="Cause"/> relaxed, all else in its place, it could start
/// earlier; where <paramref name="CoBlockers"/> are named, when these are relaxed too.
/// </summary>
/// <param name="Cause">What holds it.</param>
/// <param name="CoBlockers">What holds it at the same time.</param>
public sealed record StartCause(Blocker Cause, IReadOnlyList<Blocker> CoBlockers);
