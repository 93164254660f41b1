using System.Globalization;
using System.Text.Json.Nodes;
using EpisodePlanner.Checking;

namespace EpisodePlanner.Trials.Fuzzing;

/// <summary>A request that is bad in some way, as a rule.</summary>
internal sealed record FuzzRequest(
    HttpMethod Method, string Path, ByteArrayContent? Content, IReadOnlyList<(string Name, string Value)> Headers, string How)
    : IDisposable
{
    public override string ToString()
    {
        var headers = string.Join(", ", Headers.Select(header => $"{header.Name}: {Short(header.Value)}"));
        return $"{Method} {Short(Path)} ({How}; {Content?.Headers.ContentType}) {headers}";
    }

    public void Dispose() => Content?.Dispose();

    private static string Short(string text) => text.Length <= 200 ? text : $"{text[..200]}… ({text.Length})";
}

/// <summary>Makes bad requests to operations.</summary>
internal sealed class FuzzRequests(SchemaSamples samples, Spoiling spoiling, KnownIds known, Dice dice)
{
    private static readonly string[] MediaTypes = ["text/plain", "application/xml", "multipart/form-data", "application/json; charset=utf-16", "x"];
    private static readonly string[] Accepts = ["*/*", "text/html", "text/markdown", "image/png", "application/json;q=0", "x/"];

    /// <summary>A request to an operation.</summary>
    /// <param name="operation">The operation.</param>
    public FuzzRequest Make(ApiOperation operation)
    {
        var path = Path(operation);
        var (content, how) = Content(operation, path.Split('/')[^1]);
        return new FuzzRequest(
            dice.Chance(2) ? HttpMethod.Patch : operation.Method,
            path + Query(operation),
            content,
            [.. Headers(operation)],
            how);
    }

    private string Path(ApiOperation operation)
    {
        var steps = operation.Path.Split('/');
        return string.Join('/', steps.Select((step, i) => step.StartsWith('{') ? Fill(steps[i - 1]) : step));
    }

    private string Fill(string collection) => (dice.Chance(15), collection) switch
    {
        (true, _) => Hostile.Id(dice),
        (_, "changes") => dice.Between(0, 5).ToString(CultureInfo.InvariantCulture),
        _ => known.Of(collection),
    };

    private string Query(ApiOperation operation)
    {
        var asked = operation.Parameters.Where(parameter => parameter.In == "query" && dice.Chance(40));
        var pairs = asked.Select(parameter => $"{parameter.Name}={Uri.EscapeDataString(Value(parameter))}").ToList();
        return pairs.Count == 0 ? "" : $"?{string.Join('&', pairs)}";
    }

    private string Value(ApiParameter parameter)
    {
        var word = dice.Chance(50) ? samples.Of(parameter.Schema)?.ToString() ?? "" : Hostile.Word(dice);
        return new string([.. word.Take(500).Where(letter => !char.IsSurrogate(letter))]);
    }

    private IEnumerable<(string Name, string Value)> Headers(ApiOperation operation)
    {
        if (operation.Method != HttpMethod.Get && dice.Chance(85))
        {
            yield return ("If-Match", dice.Chance(75) ? "*" : Hostile.Header(dice));
        }

        if (dice.Chance(10))
        {
            yield return (dice.Pick(["If-None-Match", "Idempotency-Key", "If-Modified-Since", "Range"]), Hostile.Header(dice));
        }

        if (dice.Chance(10))
        {
            yield return ("Accept", dice.Pick(Accepts));
        }

        if (dice.Chance(3))
        {
            yield return dice.Pick([("Origin", "http://elsewhere.example"), ("Sec-Fetch-Site", "cross-site"), ("Host", "elsewhere.example")]);
        }
    }

    private (ByteArrayContent? Content, string How) Content(ApiOperation operation, string id)
    {
        if (operation.Body is null && dice.Chance(95))
        {
            return (null, "no body");
        }

        var body = samples.Of(operation.Body);
        if (operation.Method == HttpMethod.Put && body is JsonObject thing && thing.ContainsKey("id") && dice.Chance(80))
        {
            thing["id"] = id;
        }

        var (bytes, how) = spoiling.Spoil(body);
        var content = new ByteArrayContent(bytes);
        var mediaType = dice.Chance(5) ? dice.Pick(MediaTypes) : operation.MediaType ?? "application/json";
        content.Headers.TryAddWithoutValidation("Content-Type", mediaType);
        return (content, how);
    }
}
