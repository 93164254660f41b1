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
    private const int WorkshopsKept = 5;
    private const int RequestsPerWorkshop = 100;

    /// <summary>Runs the trial on a server.</summary>
    public async Task<FuzzFigures> Run(Api api)
    {
        var document = new ApiDocument((await api.Get("/openapi/v1.json")).Must("GET the description").Json);
        var dice = new Dice(Seed);
        var operations = document.Operations;
        var workshops = new List<string>();
        var maker = new FuzzRequests(new SchemaSamples(document, dice), new Spoiling(dice), dice);
        var tally = new FuzzTally();
        for (var i = 0; i < Requests; i++)
        {
            if (i % RequestsPerWorkshop == 0)
            {
                await Refresh(api, workshops);
            }

            var operation = operations[i % operations.Count];
            using var request = maker.Make(operation, workshops);
            tally.Add(operation, request, await Send(api, request));
        }

        return tally.Figures(operations);
    }

    /// <summary>Some of the requests delete workshops and what is in them.</summary>
    private static async Task Refresh(Api api, List<string> workshops)
    {
        var file = TrialWorkshop.File("Fuzz", ["bench-1", "bench-2"], ["task-1", "task-2", "task-3"]);
        workshops.Add((await api.Import(file)).Split('/')[^1]);
        if (workshops.Count > WorkshopsKept)
        {
            workshops.RemoveAt(0);
        }
    }

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
