using System.Net;
using System.Text.Json.Nodes;

namespace EpisodePlanner.Web.Tests.Http.Walking;

/// <summary>What was sent to an operation, and what came back.</summary>
internal sealed record Step(Operation Operation, string Path, string? Body, Reply Reply);

/// <summary>Asks for one operation in a workshop of its own, as somebody would who has only the description.</summary>
internal sealed class Walker(ApiClient api, ApiDescription description, string file, int seed)
{
    private readonly Generated generated = new(description, seed);

    public async Task<Step> Walk(Operation operation)
    {
        var workshop = await api.Import(file);
        await Prepare(operation.Id, workshop);
        var path = await Address(operation, workshop);
        var body = operation.Body is { } schema ? (await Body(schema, operation, path)).ToJsonString() : null;
        var reply = await api.Send(operation.Method, path, body, [.. await Headers(operation, path, workshop)]);
        return new Step(operation, path, body, reply);
    }

    /// <summary>Some operations need something to have happened.</summary>
    private async Task Prepare(string operation, string workshop)
    {
        if (operation is "undo" or "redo" or "undoChange" or "getChange")
        {
            (await api.Post($"{workshop}/places", """{ "name": "Attic", "kind": "bench" }""")).Must(HttpStatusCode.Created);
        }

        if (operation is "redo")
        {
            (await api.Post($"{workshop}/undo")).Must(HttpStatusCode.OK);
        }

        if (operation is "restoreThing" or "listDeleted")
        {
            (await api.Delete($"{workshop}/bookings/track-day", ("If-Match", "*"))).Must(HttpStatusCode.NoContent);
        }

        if (operation is "restoreWorkshop" or "listDeletedWorkshops")
        {
            (await api.Delete(workshop, ("If-Match", "*"))).Must(HttpStatusCode.NoContent);
        }
    }

    private async Task<string> Address(Operation operation, string workshop)
    {
        var path = operation.Path
            .Replace($"{ApiClient.Root}/workshops/{{workshop}}", workshop, StringComparison.Ordinal)
            .Replace("{version}", "2", StringComparison.Ordinal)
            .Replace("{kind}/{id}", "bookings/track-day", StringComparison.Ordinal);
        if (operation.Id == "getPlanProof")
        {
            var plan = (await api.Get($"{workshop}/plan?trials=false")).Must(HttpStatusCode.OK).Json;
            return $"{path}?seconds=1&episode={plan["episodes"]![0]!["id"]!.GetValue<string>()}";
        }

        if (!path.Contains("{id}", StringComparison.Ordinal))
        {
            return path;
        }

        var list = path[..path.IndexOf("/{id}", StringComparison.Ordinal)];
        return path.Replace("{id}", await IdIn(list, operation), StringComparison.Ordinal);
    }

    /// <summary>A thing that may be removed is made first; a told date is not replaced, but made.</summary>
    private async Task<string> IdIn(string list, Operation operation)
    {
        if (operation.Id == "putToldDate")
        {
            return "told-2";
        }

        if (operation.Method == HttpMethod.Delete || list.EndsWith("/supposes", StringComparison.Ordinal))
        {
            var template = operation.Path[..operation.Path.IndexOf("/{id}", StringComparison.Ordinal)];
            var create = description.Operations.Single(other => other.Method == HttpMethod.Post && other.Path == template);
            var made = (await api.Post(list, generated.Of(create.Body!).ToJsonString())).Must(HttpStatusCode.Created);
            return made.Location!.Split('/')[^1];
        }

        // A silence is asked for by its series.
        var things = list.Replace("/silences", "/series", StringComparison.Ordinal);
        var first = (await api.Get(things)).Must(HttpStatusCode.OK).Json["items"]![0]!;
        return first["thing"]!["id"]!.GetValue<string>();
    }

    private async Task<JsonNode> Body(string schema, Operation operation, string path)
    {
        if (schema == "workshop")
        {
            return JsonNode.Parse(file)!;
        }

        var body = generated.Of(schema).AsObject();
        if (operation.Method == HttpMethod.Put && body.ContainsKey("id"))
        {
            body["id"] = path.Split('/')[^1];
        }

        if (operation.Id == "putSeries")
        {
            body["milestones"] = (await api.Get(path)).Json["milestones"]!.DeepClone();
        }

        return body;
    }

    private async Task<IReadOnlyList<(string Name, string Value)>> Headers(Operation operation, string path, string workshop)
    {
        if (operation.Method == HttpMethod.Get || !operation.Takes("If-Match") || operation.Id == "makeChanges")
        {
            return [];
        }

        if (operation.Id == "putToldDate")
        {
            return [("If-None-Match", "*")];
        }

        var tagged = operation.Id switch
        {
            "acceptPlan" => $"{workshop}/plan",
            "keepSuppose" => path[..path.LastIndexOf('/')],
            _ when operation.Method == HttpMethod.Post => workshop,
            _ => path,
        };
        return [("If-Match", (await api.Get(tagged)).Must(HttpStatusCode.OK).Tag!)];
    }
}
