using System.Text.Json.Serialization;
using EpisodePlanner.Planning;

namespace EpisodePlanner.Web.Serving;

/// <summary>A problem as it is written: the members of RFC 9457 and those of our own; absent ones are left out.</summary>
public sealed record ProblemDocument
{
    /// <summary>The address of the explanation of this kind of problem.</summary>
    public required string Type { get; init; }

    /// <summary>The kind in a few words.</summary>
    public required string Title { get; init; }

    /// <summary>The HTTP status.</summary>
    public required int Status { get; init; }

    /// <summary>What is wrong this time, and what would be right.</summary>
    public required string Detail { get; init; }

    /// <summary>Every place that is wrong.</summary>
    public ValueList<ProblemError>? Errors { get; init; }

    /// <summary>The version the request named, as an ETag.</summary>
    public string? Yours { get; init; }

    /// <summary>The version that is there, as an ETag; absent where there is none.</summary>
    public string? Current { get; init; }

    /// <summary>What was changed meanwhile, where it is more than the thing at the address.</summary>
    public ValueList<ProblemThing>? Things { get; init; }

    /// <summary>When it was deleted, RFC 3339.</summary>
    public string? Since { get; init; }

    /// <summary>Where a POST brings it back.</summary>
    public string? Restore { get; init; }

    /// <summary>The number under which the server's log tells more.</summary>
    public string? Trace { get; init; }
}

/// <summary>A place that is wrong.</summary>
/// <param name="Where">The place, a JSON path into what was sent.</param>
/// <param name="Says">What is wrong, and what would be right.</param>
public sealed record ProblemError(string Where, string Says);

/// <summary>Something that was changed meanwhile.</summary>
/// <param name="Kind">Its kind, as in the workshop file.</param>
/// <param name="Id">Its id.</param>
/// <param name="Current">The version that is there, as an ETag; absent where it is deleted or never was.</param>
public sealed record ProblemThing(
    string Kind, string Id, [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] string? Current);
