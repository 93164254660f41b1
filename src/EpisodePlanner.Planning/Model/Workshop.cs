using System.ComponentModel.DataAnnotations;

namespace EpisodePlanner.Planning;

/// <summary>Everything one maker plans, at one moment: the unit of storage, sharing, import and export.</summary>
/// <remarks>
/// Immutable; it changes only through Apply, which keeps every reference whole. The order of the members is the order
/// in the workshop file.
/// </remarks>
public sealed record Workshop
{
    /// <summary>The newest file format this code reads and the one it writes.</summary>
    public const int CurrentFormat = 1;

    /// <summary>The format of the file.</summary>
    [Range(1, CurrentFormat)]
    public required int Format { get; init; }

    /// <summary>The workshop's name.</summary>
    [StringLength(200, MinimumLength = 1)]
    public required string Name { get; init; }

    /// <summary>The IANA time zone in which all local times are read: "Europe/Dublin".</summary>
    [StringLength(100, MinimumLength = 1)]
    public required string Zone { get; init; }

    /// <summary>Present where this is a demo.</summary>
    public DemoMark? Demo { get; init; }

    /// <summary>What holds for the whole workshop.</summary>
    public Settings Settings { get; init; } = new();

    /// <summary>The people.</summary>
    public Keyed<Person> People { get; init; } = [];

    /// <summary>The machines.</summary>
    public Keyed<Machine> Machines { get; init; } = [];

    /// <summary>The places.</summary>
    public Keyed<Place> Places { get; init; } = [];

    /// <summary>The series.</summary>
    public Keyed<Series> Series { get; init; } = [];

    /// <summary>The tasks.</summary>
    public Keyed<WorkTask> Tasks { get; init; } = [];

    /// <summary>The episodes that are cut.</summary>
    public Keyed<Episode> Episodes { get; init; } = [];

    /// <summary>When the channel may publish.</summary>
    public Keyed<SlotRule> SlotRules { get; init; } = [];

    /// <summary>The uploads made.</summary>
    public Keyed<Upload> Uploads { get; init; } = [];

    /// <summary>The log.</summary>
    public Keyed<LogEntry> Log { get; init; } = [];

    /// <summary>The dates told.</summary>
    public Keyed<ToldDate> ToldDates { get; init; } = [];

    /// <summary>The timed lines.</summary>
    public Keyed<TimedLine> TimedLines { get; init; } = [];

    /// <summary>The bookings.</summary>
    public Keyed<Booking> Bookings { get; init; } = [];

    /// <summary>The plan the maker accepted.</summary>
    public AcceptedPlan? Accepted { get; init; }
}
