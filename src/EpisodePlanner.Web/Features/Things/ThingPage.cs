using System.ComponentModel.DataAnnotations;
using EpisodePlanner.Planning;

namespace EpisodePlanner.Web.Features.Things;

/// <summary>A page of a list of things, in the order of their ids.</summary>
/// <typeparam name="T">The kind of thing.</typeparam>
internal sealed record ThingPage<T>
    where T : class, IThing
{
    /// <summary>The version of the workshop that the list is of; its ETag is the same.</summary>
    [Range(1, Versions.Most)]
    public required long Version { get; init; }

    /// <summary>The things of this page.</summary>
    public required ValueList<ThingLine<T>> Items { get; init; }

    /// <summary>Where there are more: what to give as "after" for the next page.</summary>
    public Id? Next { get; init; }
}

/// <summary>A thing in a list.</summary>
/// <typeparam name="T">The kind of thing.</typeparam>
internal sealed record ThingLine<T>
    where T : class, IThing
{
    /// <summary>The version of the workshop at which the thing was changed last; its ETag is this in quotes.</summary>
    [Range(1, Versions.Most)]
    public required long Version { get; init; }

    /// <summary>The thing, as the workshop file holds it.</summary>
    public required T Thing { get; init; }
}
