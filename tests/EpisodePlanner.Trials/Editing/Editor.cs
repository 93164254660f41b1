using System.Diagnostics;
using System.Net;
using System.Text.Json.Nodes;
using EpisodePlanner.Trials.Asking;

namespace EpisodePlanner.Trials.Editing;

/// <summary>One editor among many.</summary>
internal sealed class Editor(Api api, string workshop, string own, string shared, string task, string other)
{
    /// <summary>How many changes it made.</summary>
    public int Made { get; private set; }

    /// <summary>How often another was quicker.</summary>
    public int Retries { get; private set; }

    /// <summary>Whether its link was let in.</summary>
    public bool HasLinked { get; private set; }

    /// <summary>How long its slowest request took.</summary>
    public TimeSpan Slowest { get; private set; }

    /// <summary>Counts so many times, then links.</summary>
    public async Task Work(int rounds)
    {
        for (var round = 0; round < rounds; round++)
        {
            await Count(own);
            await Count(shared);
        }

        HasLinked = await Change($"{workshop}/tasks/{task}", AddLink);
    }

    private async Task Count(string place)
    {
        var counted = await Change(
            $"{workshop}/places/{place}", body => TrialWorkshop.Place(place, TrialWorkshop.CountOf(body) + 1));
        if (!counted)
        {
            throw new TrialException($"{place} could not be counted up.");
        }
    }

    private JsonNode AddLink(JsonNode body)
    {
        body["links"] = new JsonArray(new JsonObject { ["task"] = other });
        return body;
    }

    /// <summary>Reads, changes and writes until nobody came between.</summary>
    /// <returns>False where the rules refuse the change.</returns>
    private async Task<bool> Change(string path, Func<JsonNode, JsonNode> change)
    {
        while (true)
        {
            var read = (await Timed(() => api.Get(path))).Must($"GET {path}");
            var version = read.Version ?? throw new TrialException($"GET {path}: without an entity tag.");
            var written = await Timed(() => api.Put(path, change(read.Json), version));
            switch (written.Status)
            {
                case HttpStatusCode.PreconditionFailed:
                    Retries++;
                    continue;
                case HttpStatusCode.UnprocessableEntity or HttpStatusCode.Conflict:
                    return false;
                default:
                    written.Must($"PUT {path}");
                    Made++;
                    return true;
            }
        }
    }

    private async Task<Answer> Timed(Func<Task<Answer>> ask)
    {
        var begun = Stopwatch.GetTimestamp();
        var answer = await ask();
        var took = Stopwatch.GetElapsedTime(begun);
        Slowest = took > Slowest ? took : Slowest;
        return answer;
    }
}
