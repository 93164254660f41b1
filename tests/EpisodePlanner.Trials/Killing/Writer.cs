using System.Text.Json.Nodes;
using EpisodePlanner.Trials.Asking;

namespace EpisodePlanner.Trials.Killing;

/// <summary>
/// Writes until it is cut off: a place by itself, two places by one change, and now and then a whole new workshop.
/// </summary>
internal sealed class Writer(string workshop, int number)
{
    private const int ImportEvery = 8;
    private const int PlacesImported = 300;
    private readonly Promise own = new(Own(number));
    private readonly Promise pair = new(Left(number));
    private readonly Promise imports = new($"imports of writer {number}");

    /// <summary>What it was told.</summary>
    public IReadOnlyList<Promise> Promises => [own, pair, imports];

    private string ImportPrefix => $"import {number} ";

    /// <summary>The places that a writer needs.</summary>
    public static string[] Places(int number) => [Own(number), Left(number), Right(number)];

    /// <summary>Writes until the server is gone.</summary>
    public async Task WriteUntilCutOff(Api api)
    {
        try
        {
            for (var turn = 0; true; turn++)
            {
                await own.Raise(count => WriteOne(api, count));
                await pair.Raise(count => WriteTwo(api, count));
                if (turn % ImportEvery == number % ImportEvery)
                {
                    await imports.Raise(count => Import(api, count));
                }
            }
        }
        catch (HttpRequestException)
        {
            // The server was killed.
        }
        catch (IOException)
        {
            // The same, while it was answering.
        }
    }

    /// <summary>Looks for everything that the server said yes to, and that nothing is there by half.</summary>
    public async Task Check(Api api, IReadOnlyList<(string Name, string Path)> workshops)
    {
        own.Check(await Count(api, Own(number)));
        var (left, right) = (await Count(api, Left(number)), await Count(api, Right(number)));
        if (left != right)
        {
            throw new TrialException($"A change of two places was made by half: {left} and {right}.");
        }

        pair.Check(left);
        var mine = workshops.Where(each => each.Name.StartsWith(ImportPrefix, StringComparison.Ordinal)).ToList();
        imports.Check(mine.Count);
        if (mine.Count > 0)
        {
            await CheckImport(api, mine.Single(each => each.Name == $"{ImportPrefix}{mine.Count}"));
        }
    }

    private static string Own(int number) => $"own-{number}";

    private static string Left(int number) => $"left-{number}";

    private static string Right(int number) => $"right-{number}";

    private static async Task CheckImport(Api api, (string Name, string Path) made)
    {
        var export = (await api.Get($"{made.Path}/export")).Must("GET export").Json;
        if (export["places"]?.AsArray().Count != PlacesImported)
        {
            throw new TrialException($"The workshop “{made.Name}” was imported by half.");
        }
    }

    private async Task<int> Count(Api api, string place) =>
        TrialWorkshop.CountOf((await api.Get($"{workshop}/places/{place}")).Must("GET").Json);

    private async Task WriteOne(Api api, int count)
    {
        var path = $"{workshop}/places/{Own(number)}";
        var version = (await api.Get(path)).Must($"GET {path}").Version!;
        (await api.Put(path, TrialWorkshop.Place(Own(number), count), version)).Must($"PUT {path}");
    }

    private async Task WriteTwo(Api api, int count)
    {
        var version = (await api.Get(workshop)).Must("GET the workshop").Version!.Trim('"');
        await api.Create($"{workshop}/changes", new JsonObject
        {
            ["base"] = JsonNode.Parse(version),
            ["changes"] = new JsonArray(Change(Left(number), count), Change(Right(number), count)),
        });
    }

    private static JsonObject Change(string place, int count) => new()
    {
        ["kind"] = "place",
        ["id"] = place,
        ["to"] = TrialWorkshop.Place(place, count),
    };

    private Task<string> Import(Api api, int count) => api.Import(
        TrialWorkshop.File($"{ImportPrefix}{count}", Enumerable.Range(0, PlacesImported).Select(i => $"place-{i}"), []));
}
