namespace EpisodePlanner.Scheduling;

/// <summary>What a station is.</summary>
public enum StationKind
{
    /// <summary>A pair of hands.</summary>
    Person,

    /// <summary>A machine.</summary>
    Machine,

    /// <summary>A place; setting up and tidying cost minutes there.</summary>
    Place,
}

/// <summary>Something that one stage at a time can take.</summary>
/// <param name="Name">Its name, for reasons.</param>
/// <param name="Kind">Person, machine or place.</param>
/// <param name="Hours">When it is open.</param>
public sealed record Station(string Name, StationKind Kind, IntervalCalendar Hours)
{
    /// <summary>At a place: minutes of setting up before the first work of a sitting.</summary>
    public int SetUpMinutes { get; init; }

    /// <summary>At a place: minutes of tidying after the last work of a sitting.</summary>
    public int TidyMinutes { get; init; }
}

/// <summary>Hours that bind some stages at a station and not others: outside quiet hours, in daylight.</summary>
/// <param name="Name">Its name, for reasons: "quiet hours of the garage".</param>
/// <param name="Open">When these stages may work.</param>
public sealed record HoursLimit(string Name, IntervalCalendar Open);
