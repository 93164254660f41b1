using System.ComponentModel.DataAnnotations;
using EpisodePlanner.Data;
using EpisodePlanner.Planning;
using EpisodePlanner.Planning.Files;
using EpisodePlanner.Web.Serving;
using EpisodePlanner.Web.Serving.Answers;
using EpisodePlanner.Web.Serving.ConditionalRequests;
using Microsoft.AspNetCore.Http.HttpResults;

namespace EpisodePlanner.Web.Features.Changing;

/// <summary>A change that was made.</summary>
internal sealed record ChangeMade
{
    /// <summary>The workshop's version after the change; where nothing changed, as it was.</summary>
    [Range(1, Versions.Most)]
    public required long Version { get; init; }

    /// <summary>What was done, in words.</summary>
    [StringLength(2_000)]
    public required string Says { get; init; }

    /// <summary>What was changed, with the new versions.</summary>
    public ValueList<TouchedThing> Things { get; init; } = [];

    /// <summary>The answer to a request for a change.</summary>
    /// <param name="outcome">What became of it.</param>
    /// <param name="workshop">The workshop.</param>
    /// <param name="yours">What the client expected of the workshop.</param>
    public static Results<Answer<ChangeMade>, Problem> Answer(EditOutcome outcome, Id workshop, EntityTags? yours) => outcome switch
    {
        Made made => Answer(Of(made)),
        Unchanged same => Answer(new ChangeMade { Version = same.Now.Version, Says = "Changed nothing" }),
        _ => Outcomes.Refuse(outcome, workshop, yours),
    };

    private static Answer<ChangeMade> Answer(ChangeMade made) => new(WorkshopFile.Write(made), EntityTags.Of(made.Version));

    private static ChangeMade Of(Made made) => new()
    {
        Version = made.Change.Line.Version,
        Says = made.Change.Line.Says,
        Things = made.Change.After.Touches().Select(what => TouchedThing.Of(what, made)).ToValueList(),
    };
}

/// <summary>A thing, or a part of the whole, that a change touched.</summary>
internal sealed record TouchedThing
{
    /// <summary>Its kind, as the workshop file names the array; about, settings or accepted for parts of the whole.</summary>
    [StringLength(40)]
    public required string Kind { get; init; }

    /// <summary>Its id; that of a part of the whole is its kind.</summary>
    public required Id Id { get; init; }

    /// <summary>Its version after the change; absent where it is gone, or was changed again since.</summary>
    [Range(1, Versions.Most)]
    public long? Version { get; init; }

    /// <summary>What a change left of an aggregate.</summary>
    public static TouchedThing Of(Aggregate what, Made made) => new()
    {
        Kind = what.Kind,
        Id = what.Id,
        Version = made.Now.VersionOf(what) == made.Change.Line.Version ? made.Change.Line.Version : null,
    };
}
