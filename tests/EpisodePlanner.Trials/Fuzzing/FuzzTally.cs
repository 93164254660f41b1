using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using EpisodePlanner.Trials.Asking;

namespace EpisodePlanner.Trials.Fuzzing;

/// <summary>Looks at each answer and counts.</summary>
internal sealed partial class FuzzTally
{
    private const int MostFindings = 25;
    private readonly SortedDictionary<int, int> statuses = [];
    private readonly HashSet<ApiOperation> done = [];
    private readonly Dictionary<(ApiOperation Operation, string Objection), string> findings = [];
    private int requests;

    public void Add(ApiOperation operation, FuzzRequest request, Answer? answer)
    {
        requests++;
        var status = (int?)answer?.Status ?? 0;
        statuses[status] = statuses.GetValueOrDefault(status) + 1;
        if (answer is { IsDone: true })
        {
            done.Add(operation);
        }

        if (Objection(answer) is { } objection && findings.Count < MostFindings)
        {
            findings.TryAdd((operation, objection), $"{objection}\n  {request}\n  {answer}");
        }
    }

    public FuzzFigures Figures(IReadOnlyList<ApiOperation> operations) => new(
        requests,
        operations.Count,
        statuses,
        [.. findings.Values],
        [.. operations.Where(operation => !done.Contains(operation)).Select(operation => operation.ToString())]);

    private static string? Objection(Answer? answer) => answer switch
    {
        null => "The connection was cut.",
        { Status: >= System.Net.HttpStatusCode.InternalServerError } => "A server error.",
        { Status: < System.Net.HttpStatusCode.BadRequest } => null,
        { MediaType: not "application/problem+json" } => "The refusal is no problem document.",
        _ when Inside().IsMatch(answer.Body) => "The refusal tells of the inside.",
        _ => Malformed(answer),
    };

    private static string? Malformed(Answer refusal)
    {
        try
        {
            return refusal.Json is JsonObject problem
                && problem["type"]?.GetValue<string>() is { Length: > 0 }
                && problem["title"]?.GetValue<string>() is { Length: > 0 }
                && problem["status"]?.GetValue<int>() == (int)refusal.Status
                ? null
                : "The problem document lacks type, title or the right status.";
        }
        catch (JsonException)
        {
            return "The problem document is no JSON.";
        }
    }

    [GeneratedRegex(@"^\s+at \w+\.|\.cs:line|Exception\b|StackTrace", RegexOptions.Multiline)]
    private static partial Regex Inside();
}
