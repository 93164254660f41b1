namespace EpisodePlanner.Web.Features.Plans;

/// <summary>
/// The plan for programs. Moments are local ISO date-times with their offset, days ISO dates, lengths whole minutes; a
/// member without a value is null. Members and elements keep their order from plan to plan.
/// </summary>
public sealed record PlanDocument : IComputedDocument
{
    /// <summary>The format of this document.</summary>
    public int Format { get; init; } = 1;

    /// <summary>The workshop's name.</summary>
    public required string Workshop { get; init; }

    /// <summary>The zone in which local times are meant.</summary>
    public required string Zone { get; init; }

    /// <summary>The moment of planning.</summary>
    public required string PlannedAt { get; init; }

    /// <summary>The moment until which the plan looks.</summary>
    public required string Horizon { get; init; }

    /// <summary>By how many weeks the dates of a demo were moved.</summary>
    public int? DemoMovedWeeks { get; init; }

    /// <summary>The next upload.</summary>
    public required UploadEntry? NextUpload { get; init; }

    /// <summary>Every task with work left, by id.</summary>
    public required IReadOnlyList<TaskEntry> Tasks { get; init; }

    /// <summary>The episodes to come, those with a date first, by date.</summary>
    public required IReadOnlyList<EpisodeEntry> Episodes { get; init; }

    /// <summary>The silences of every series that is not finished, by name.</summary>
    public required IReadOnlyList<SilenceEntry> Series { get; init; }

    /// <summary>The silences of the channel.</summary>
    public required SilenceEntry Channel { get; init; }

    /// <summary>The one thing hands can do now, or next.</summary>
    public required NextEntry? NextThing { get; init; }

    /// <summary>The runs that start before tomorrow noon.</summary>
    public required IReadOnlyList<TonightEntry> Tonight { get; init; }

    /// <summary>The shots that the work will make impossible, the most urgent first.</summary>
    public required IReadOnlyList<ShotEntry> FilmFirst { get; init; }

    /// <summary>Bookings, approvals, fit days and dates that others set.</summary>
    public required OutsideEntry Outside { get; init; }

    /// <summary>What starts at another time than was accepted, in the next seven days.</summary>
    public required IReadOnlyList<MovedEntry> Moved { get; init; }

    /// <summary>What the plan can't do or does not keep, the gravest first.</summary>
    public required IReadOnlyList<FindingEntry> Findings { get; init; }

    /// <summary>What was taken for granted, by how far it moves the next upload.</summary>
    public required IReadOnlyList<AssumedEntry> Assumed { get; init; }

    /// <summary>How the schedule was found and what it is judged by.</summary>
    public required SearchEntry Search { get; init; }
}

/// <summary>An upload.</summary>
/// <param name="Episode">Its episode.</param>
/// <param name="Title">Its working title.</param>
/// <param name="Series">Its series.</param>
/// <param name="Publish">The public moment.</param>
public sealed record UploadEntry(string Episode, string Title, string Series, string Publish);

/// <summary>Something the plan has to say.</summary>
/// <param name="Kind">impossible, missed, noEffect or note.</param>
/// <param name="Where">The place in the workshop.</param>
/// <param name="Says">A sentence.</param>
public sealed record FindingEntry(string Kind, string Where, string Says);

/// <summary>Something taken for granted.</summary>
/// <param name="Name">A short name that stays the same.</param>
/// <param name="Where">The member that would say it.</param>
/// <param name="Says">What was assumed.</param>
/// <param name="Ask">The question whose answer would replace it.</param>
/// <param name="Tried">The other answer that was tried.</param>
/// <param name="MovesMinutes">By how much the next upload moves with it, negative for earlier; null where not tried.</param>
public sealed record AssumedEntry(string Name, string Where, string Says, string Ask, string Tried, int? MovesMinutes);

/// <summary>How the schedule was found.</summary>
/// <param name="Rule">The rule of priority.</param>
/// <param name="Schedules">How many schedules were made.</param>
/// <param name="LateMinutes">Minutes by which told, needed-by and pinned dates are missed.</param>
/// <param name="Silence">Squares of days of silence beyond promises.</param>
/// <param name="Moves">Stages that leave their accepted start.</param>
/// <param name="EndMinute">The end of the work, minutes from planning.</param>
public sealed record SearchEntry(string Rule, int Schedules, long LateMinutes, long Silence, long Moves, long EndMinute);
