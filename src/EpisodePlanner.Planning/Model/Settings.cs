using System.ComponentModel.DataAnnotations;
using NodaTime;

namespace EpisodePlanner.Planning;

/// <summary>What holds for the whole workshop; whatever is absent is assumed.</summary>
public sealed record Settings
{
    /// <summary>The maker's name; changes at home carry it.</summary>
    [StringLength(200, MinimumLength = 1)]
    public string? Maker { get; init; }

    /// <summary>The promise of a series that names none, days.</summary>
    [Range(1, 730)]
    public int? SeriesPromiseDays { get; init; }

    /// <summary>The longest silence of the whole channel, days.</summary>
    [Range(1, 730)]
    public int? ChannelPromiseDays { get; init; }

    /// <summary>The low end of a stage's range as a share of its likely length, where it names none.</summary>
    [Range(0.05, 1)]
    public decimal? RangeLow { get; init; }

    /// <summary>The high end of a stage's range as a share of its likely length, where it names none.</summary>
    [Range(1, 20)]
    public decimal? RangeHigh { get; init; }

    /// <summary>The tail of an episode that names none.</summary>
    [MaxLength(50)]
    public ValueList<TailPart> Tail { get; init; } = [];

    /// <summary>The place where tails are done; any desk where absent.</summary>
    public Id? Desk { get; init; }

    /// <summary>How long before its slot an episode should be ready, hours.</summary>
    [Range(0, 1_000)]
    public decimal? SafetyLeadHours { get; init; }

    /// <summary>How long before the public moment supporters may watch, hours.</summary>
    [Range(0, 1_000)]
    public decimal? EarlyViewHours { get; init; }

    /// <summary>The shortest stretch worth beginning, minutes.</summary>
    [Range(0, 1_440)]
    public int? MinimumBlockMinutes { get; init; }

    /// <summary>A load or unload of at most this many minutes takes nobody's time.</summary>
    [Range(0, 60)]
    public int? TouchMinutes { get; init; }

    /// <summary>Days on which nothing is published.</summary>
    [MaxLength(1_000)]
    [AnyOrder]
    public ValueList<LocalDate> DaysToAvoid { get; init; } = [];

    /// <summary>The least days between two uploads of the channel.</summary>
    [Range(0, 365)]
    public int? DaysBetweenUploads { get; init; }

    /// <summary>Episodes the maker wants to have finished and not yet out.</summary>
    [Range(0, 100)]
    public int? BankTarget { get; init; }
}

/// <summary>Marks a demo: its dates are moved by whole weeks so that its anchor day is near today.</summary>
public sealed record DemoMark
{
    /// <summary>The day on which the demo was written.</summary>
    public required LocalDate Anchor { get; init; }
}
