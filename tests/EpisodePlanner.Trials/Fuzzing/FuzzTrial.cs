using System.Text.Json.Nodes;
using EpisodePlanner.Checking;
using EpisodePlanner.Trials.Asking;

namespace EpisodePlanner.Trials.Fuzzing;

/// <summary>
/// Sends bad requests to every operation that the server's own description names. None may end in a server error, and
/// each refusal must be a problem document (RFC 9457) that tells nothing of the inside.
/// </summary>
/// <param name="Requests">How many.</param>
/// <param name="Seed">The same seed sends the same requests.</param>
public sealed record FuzzTrial(int Requests, ulong Seed)
{
    private const int RequestsPerWorkshop = 100;

    /// <summary>Runs the trial on a server.</summary>
    public async Task<FuzzFigures> Run(Api api)
    {
        var document = new ApiDocument((await api.Get("/openapi/v1.json")).Must("GET the description").Json);
        var dice = new Dice(Seed);
        var operations = document.Operations;
        var known = new KnownIds(dice);
        var maker = new FuzzRequests(new SchemaSamples(document, dice), new Spoiling(dice), known, dice);
        var tally = new FuzzTally();
        for (var i = 0; i < Requests; i++)
        {
            if (i % RequestsPerWorkshop == 0)
            {
                // Some of the requests delete workshops and what is in them.
                known.Add(new Uri(await api.Import(File), UriKind.Relative));
            }

            var operation = operations[i % operations.Count];
            using var request = maker.Make(operation);
            var answer = await Send(api, request);
            tally.Add(operation, request, answer);
            if (answer?.Location is { } made)
            {
                known.Add(made);
            }
        }

        return tally.Figures(operations);
    }

    private static JsonObject File => TrialWorkshop.File("Fuzz", ["bench-1", "bench-2"], ["task-1", "task-2", "task-3"]);

    private static async Task<Answer?> Send(Api api, FuzzRequest request)
    {
        try
        {
            return await api.Send(request.Method, request.Path, request.Content, request.Headers);
        }
        catch (HttpRequestException)
        {
            return null;
        }
    }
}
