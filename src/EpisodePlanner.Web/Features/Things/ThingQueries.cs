using System.ComponentModel.DataAnnotations;
using EpisodePlanner.Planning;
using NodaTime;

namespace EpisodePlanner.Web.Features.Things;

/// <summary>What every list of things can be asked.</summary>
internal interface IThingQuery
{
    /// <summary>At most so many things, 1 to 500; 100 where absent.</summary>
    int Limit { get; }

    /// <summary>Only things whose id comes after this one: the "next" of the page before.</summary>
    Id? After { get; }
}

/// <summary>Lists of things with names.</summary>
internal sealed record NameQuery : IThingQuery
{
    /// <summary>At most so many things; 100 where absent.</summary>
    [Range(1, 500)]
    public int Limit { get; init; } = 100;

    /// <summary>Only things whose id comes after this one: the "next" of the page before.</summary>
    public Id? After { get; init; }

    /// <summary>Only things whose name contains this, whatever the case of its letters.</summary>
    [StringLength(200, MinimumLength = 1)]
    public string? Name { get; init; }
}

/// <summary>Lists of what belongs to the story.</summary>
internal sealed record StoryQuery : IThingQuery
{
    /// <summary>At most so many things; 100 where absent.</summary>
    [Range(1, 500)]
    public int Limit { get; init; } = 100;

    /// <summary>Only things whose id comes after this one: the "next" of the page before.</summary>
    public Id? After { get; init; }

    /// <summary>Only things whose name contains this, whatever the case of its letters.</summary>
    [StringLength(200, MinimumLength = 1)]
    public string? Name { get; init; }

    /// <summary>Only what belongs to this series.</summary>
    public Id? Series { get; init; }
}

/// <summary>Lists of what has a day.</summary>
internal sealed record DayQuery : IThingQuery
{
    /// <summary>At most so many things; 100 where absent.</summary>
    [Range(1, 500)]
    public int Limit { get; init; } = 100;

    /// <summary>Only things whose id comes after this one: the "next" of the page before.</summary>
    public Id? After { get; init; }

    /// <summary>Only what is on this day or later.</summary>
    public LocalDate? From { get; init; }

    /// <summary>Only what is on this day or earlier.</summary>
    public LocalDate? Until { get; init; }
}

/// <summary>Lists of what has a day and belongs to a series.</summary>
internal sealed record SeriesDayQuery : IThingQuery
{
    /// <summary>At most so many things; 100 where absent.</summary>
    [Range(1, 500)]
    public int Limit { get; init; } = 100;

    /// <summary>Only things whose id comes after this one: the "next" of the page before.</summary>
    public Id? After { get; init; }

    /// <summary>Only what belongs to this series.</summary>
    public Id? Series { get; init; }

    /// <summary>Only what is on this day or later.</summary>
    public LocalDate? From { get; init; }

    /// <summary>Only what is on this day or earlier.</summary>
    public LocalDate? Until { get; init; }
}

/// <summary>The log as a list.</summary>
internal sealed record LogQuery : IThingQuery
{
    /// <summary>At most so many entries; 100 where absent.</summary>
    [Range(1, 500)]
    public int Limit { get; init; } = 100;

    /// <summary>Only entries whose id comes after this one: the "next" of the page before.</summary>
    public Id? After { get; init; }

    /// <summary>Only entries about this task.</summary>
    public Id? Task { get; init; }

    /// <summary>Only entries about work for this series.</summary>
    public Id? Series { get; init; }

    /// <summary>Only entries of this day or later, by the workshop's clock.</summary>
    public LocalDate? From { get; init; }

    /// <summary>Only entries of this day or earlier, by the workshop's clock.</summary>
    public LocalDate? Until { get; init; }
}
