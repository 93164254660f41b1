using System.Text.Json.Nodes;

namespace EpisodePlanner.Trials.Fuzzing;

/// <summary>One operation of the API, as its document describes it.</summary>
/// <param name="Method">How it is asked.</param>
/// <param name="Path">Where, with its parameters in braces.</param>
/// <param name="Parameters">What it can be told beside the body.</param>
/// <param name="Body">The schema of its body; null where it takes none.</param>
/// <param name="MediaType">What the body is.</param>
internal sealed record ApiOperation(
    HttpMethod Method, string Path, IReadOnlyList<ApiParameter> Parameters, JsonNode? Body, string? MediaType)
{
    public override string ToString() => $"{Method} {Path}";
}

/// <summary>A parameter of an operation.</summary>
/// <param name="Name">Its name.</param>
/// <param name="In">Where it stands: "path", "query" or "header".</param>
/// <param name="Schema">What it may be.</param>
internal sealed record ApiParameter(string Name, string In, JsonNode? Schema);
