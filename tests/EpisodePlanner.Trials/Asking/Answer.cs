using System.Net;
using System.Text.Json.Nodes;

namespace EpisodePlanner.Trials.Asking;

/// <summary>What the server answered.</summary>
/// <param name="Status">The status.</param>
/// <param name="MediaType">What the body is; null where there is none.</param>
/// <param name="Version">The entity tag as it was sent; null where there is none.</param>
/// <param name="Location">Where what was created is; null where nothing was.</param>
/// <param name="Body">The body as text.</param>
public sealed record Answer(HttpStatusCode Status, string? MediaType, string? Version, Uri? Location, string Body)
{
    /// <summary>Whether the server did what was asked.</summary>
    public bool IsDone => (int)Status is >= 200 and < 300;

    /// <summary>The body as JSON.</summary>
    public JsonNode Json => JsonNode.Parse(Body) ?? throw new InvalidOperationException("The body is null.");

    /// <summary>The answer, where it is what must come.</summary>
    /// <exception cref="TrialException">The server refused.</exception>
    public Answer Must(string asked) => IsDone ? this : throw new TrialException($"{asked}: {this}");

    /// <inheritdoc/>
    public override string ToString() => $"{(int)Status} {MediaType} {Body}";
}
