using System.Net;
using System.Text.Json.Nodes;

namespace EpisodePlanner.Web.Tests.Http;

/// <summary>Batches, history, undo, drafts and lists over HTTP. What is expected is our own contract.</summary>
public abstract class ChangeSuite(ApiFixture api)
{
    private const string Rename = """{ "kind": "name", "to": "Slip" }""";

    [Fact]
    public async Task Batch_IsMadeAllOrNone()
    {
        var workshop = await api.Api.ImportExample();
        var before = await api.Api.Get($"{workshop}/export");

        var broken = await api.Api.Post($"{workshop}/changes", Batch(1, Rename, """{ "kind": "series", "id": "rail-trolley", "remove": true }"""));

        broken.MustBe(HttpStatusCode.UnprocessableEntity, "broken-rules");
        Assert.Equal(before.Text, (await api.Api.Get($"{workshop}/export")).Text);
        var made = (await api.Api.Post($"{workshop}/changes", Batch(1, Rename, """{ "kind": "booking", "id": "track-day", "remove": true }""")))
            .Must(HttpStatusCode.OK);
        Assert.Equal(2, made.Json["version"]!.GetValue<int>());
        Assert.Equal(["about", "bookings"], made.Json["things"]!.AsArray().Select(thing => thing!["kind"]!.GetValue<string>()));
    }

    [Fact]
    public async Task Batch_FromAnOldBase_IsStaleOnlyWhereItTouchesWhatChanged()
    {
        var workshop = await api.Api.ImportExample();
        (await api.Api.Delete($"{workshop}/bookings/track-day", ("If-Match", "*"))).Must(HttpStatusCode.NoContent);

        (await api.Api.Post($"{workshop}/changes", Batch(1, Rename))).Must(HttpStatusCode.OK);
        var stale = await api.Api.Post($"{workshop}/changes", Batch(1, Rename.Replace("Slip", "Slop", StringComparison.Ordinal)));

        stale.MustBe(HttpStatusCode.PreconditionFailed, "stale");
        Assert.Equal("\"3\"", stale.Json["things"]![0]!["current"]!.GetValue<string>());
    }

    [Fact]
    public async Task Batch_NeedsABaseOrATag()
    {
        var workshop = await api.Api.ImportExample();
        var body = $$"""{ "changes": [{{Rename}}] }""";

        (await api.Api.Post($"{workshop}/changes", body)).MustBe(HttpStatusCode.PreconditionRequired, "precondition-required");
        (await api.Api.Post($"{workshop}/changes", body, ("If-Match", "\"7\""))).MustBe(HttpStatusCode.PreconditionFailed, "stale");
        (await api.Api.Post($"{workshop}/changes", Batch(1, Rename), ("If-Match", "\"1\""))).MustBe(HttpStatusCode.BadRequest, "invalid");
        (await api.Api.Post($"{workshop}/changes", Batch(9, Rename))).MustBe(HttpStatusCode.BadRequest, "invalid");
        (await api.Api.Post($"{workshop}/changes", body, ("If-Match", "\"1\""))).Must(HttpStatusCode.OK);
    }

    [Fact]
    public async Task Batch_WithAKey_IsAnsweredTheSameThoughItsTagIsOld()
    {
        var workshop = await api.Api.ImportExample();
        var body = $$"""{ "changes": [{{Rename}}] }""";

        var first = (await api.Api.Post($"{workshop}/changes", body, ("If-Match", "\"1\""), ("Idempotency-Key", "b"))).Must(HttpStatusCode.OK);
        var again = (await api.Api.Post($"{workshop}/changes", body, ("If-Match", "\"1\""), ("Idempotency-Key", "b"))).Must(HttpStatusCode.OK);

        Assert.Equal(first.Text, again.Text);
        Assert.Equal("\"2\"", (await api.Api.Get(workshop)).Tag);
    }

    [Fact]
    public async Task Undo_ThenRedo_LeadsBackToTheByte()
    {
        var workshop = await api.Api.ImportExample();
        var before = (await api.Api.Get($"{workshop}/export")).Text;
        (await api.Api.Delete($"{workshop}/bookings/track-day", ("If-Match", "*"))).Must(HttpStatusCode.NoContent);
        var after = (await api.Api.Get($"{workshop}/export")).Text;

        (await api.Api.Post($"{workshop}/undo")).Must(HttpStatusCode.OK);
        Assert.Equal(before, (await api.Api.Get($"{workshop}/export")).Text);
        (await api.Api.Post($"{workshop}/redo")).Must(HttpStatusCode.OK);
        Assert.Equal(after, (await api.Api.Get($"{workshop}/export")).Text);
        (await api.Api.Post($"{workshop}/redo")).MustBe(HttpStatusCode.Conflict, "conflict");
    }

    [Fact]
    public async Task History_ComesInPages()
    {
        var workshop = await api.Api.ImportExample();
        foreach (var name in (string[])["A", "B", "C"])
        {
            await api.Api.Put(workshop, $$"""{ "name": "{{name}}", "zone": "Europe/Dublin" }""", ("If-Match", "*"));
        }

        var first = (await api.Api.Get($"{workshop}/changes?limit=2")).Must(HttpStatusCode.OK).Json;
        var second = (await api.Api.Get($"{workshop}/changes?limit=2&before={first["next"]}")).Must(HttpStatusCode.OK).Json;

        Assert.Equal([4, 3, 2, 1], Versions(first).Concat(Versions(second)));
        Assert.Null(second["next"]);
        var kept = (await api.Api.Get($"{workshop}/changes/3")).Must(HttpStatusCode.OK).Json;
        Assert.Equal("Anna", kept["line"]!["who"]!.GetValue<string>());
        (await api.Api.Get($"{workshop}/changes/99")).MustBe(HttpStatusCode.NotFound, "not-found");
    }

    [Fact]
    public async Task List_ComesInPagesById()
    {
        var workshop = await api.Api.ImportExample();

        var first = (await api.Api.Get($"{workshop}/places?limit=2")).Must(HttpStatusCode.OK).Json;
        var second = (await api.Api.Get($"{workshop}/places?limit=2&after={first["next"]}")).Must(HttpStatusCode.OK).Json;

        Assert.Equal(["bench", "desk", "track"], Ids(first).Concat(Ids(second)));
        Assert.Null(second["next"]);
    }

    [Theory]
    [InlineData("places?name=TRACK", "track")]
    [InlineData("tasks?series=rail-trolley&name=weld", "weld-frame")]
    [InlineData("tasks?series=nobody", "")]
    [InlineData("uploads?from=2026-11-06&until=2026-11-06", "first")]
    [InlineData("uploads?from=2026-11-07", "")]
    [InlineData("log?task=weld-frame&from=2026-11-24", "evening-1")]
    [InlineData("log?series=rail-trolley&until=2026-11-23", "")]
    [InlineData("told-dates?series=rail-trolley", "told-1")]
    [InlineData("timed-lines?from=2026-12-11", "")]
    [InlineData("bookings?until=2027-02-06", "track-day")]
    [InlineData("slot-rules?series=rail-trolley", "fridays")]
    public async Task List_IsFiltered(string query, string ids)
    {
        var workshop = await api.Api.ImportExample();

        Assert.Equal(ids, string.Join(' ', Ids((await api.Api.Get($"{workshop}/{query}")).Must(HttpStatusCode.OK).Json)));
    }

    [Theory]
    [InlineData("places?limit=0", "$.limit")]
    [InlineData("places?limit=501", "$.limit")]
    [InlineData("places?series=s", "$.series")]
    [InlineData("uploads?from=tomorrow&until=2026-02-30", "$.from $.until")]
    public async Task List_TellsEverythingThatIsWrongWithTheQuery(string query, string wheres)
    {
        var reply = await api.Api.Get($"{await api.Api.ImportExample()}/{query}");

        Assert.Equal(wheres, string.Join(' ', reply.MustBe(HttpStatusCode.BadRequest, "invalid").Wheres));
    }

    [Fact]
    public async Task Suppose_IsPlannedBesideTheRealPlanAndKept()
    {
        var workshop = await api.Api.ImportExample();
        var body = """{ "name": "no wheels", "changes": [{ "kind": "task", "id": "fit-wheels", "remove": true }] }""";
        var draft = (await api.Api.Post($"{workshop}/supposes", body)).Must(HttpStatusCode.Created);

        Assert.Single((await api.Api.Get($"{draft.Location}/plan")).Must(HttpStatusCode.OK).Json["tasks"]!.AsArray());
        Assert.Equal(2, (await api.Api.Get($"{workshop}/plan")).Json["tasks"]!.AsArray().Count);
        (await api.Api.Put(draft.Location!, body, ("If-Match", "\"9\""))).MustBe(HttpStatusCode.PreconditionFailed, "stale");
        var changed = (await api.Api.Put(draft.Location!, body.Replace("no wheels", "none", StringComparison.Ordinal), ("If-Match", draft.Tag!)))
            .Must(HttpStatusCode.OK);
        (await api.Api.Post($"{draft.Location}/keep", null, ("If-Match", changed.Tag!))).Must(HttpStatusCode.OK);

        Assert.Single((await api.Api.Get($"{workshop}/plan")).Json["tasks"]!.AsArray());
        (await api.Api.Get(draft.Location!)).MustBe(HttpStatusCode.NotFound, "not-found");
    }

    [Fact]
    public async Task SupposeDifference_TellsOnlyWhatDiffers()
    {
        var workshop = await api.Api.ImportExample();
        var body = """{ "name": "no wheels", "changes": [{ "kind": "task", "id": "fit-wheels", "remove": true }] }""";
        var draft = (await api.Api.Post($"{workshop}/supposes", body)).Must(HttpStatusCode.Created);

        var difference = (await api.Api.Get($"{draft.Location}/difference")).Must(HttpStatusCode.OK);

        var supposed = Assert.Single(difference.Json["supposed"]!.AsArray())!;
        Assert.Equal("no wheels", supposed["name"]!.GetValue<string>());
        Assert.True(supposed["hoursMore"]!.GetValue<decimal>() < 0);
        Assert.Empty(supposed["changedSince"]!.AsArray());
        (await api.Api.Get($"{draft.Location}/difference", ("If-None-Match", difference.Tag!))).Must(HttpStatusCode.NotModified);
        (await api.Api.Get($"{workshop}/supposes/none/difference")).MustBe(HttpStatusCode.NotFound, "not-found");
    }

    [Fact]
    public async Task SupposeDifference_WhereTheBaseHasChanged_NamesTheConflict()
    {
        var workshop = await api.Api.ImportExample();
        var body = """{ "name": "no wheels", "changes": [{ "kind": "task", "id": "fit-wheels", "remove": true }] }""";
        var draft = (await api.Api.Post($"{workshop}/supposes", body)).Must(HttpStatusCode.Created);
        (await api.Api.Delete($"{workshop}/tasks/fit-wheels", ("If-Match", "*"))).Must(HttpStatusCode.NoContent);

        (await api.Api.Get($"{draft.Location}/difference")).MustBe(HttpStatusCode.UnprocessableEntity, "broken-rules");
        Assert.Single((await api.Api.Get($"{workshop}/plan")).Json["tasks"]!.AsArray());
    }

    private static string Batch(int from, params string[] changes) => $$"""{ "base": {{from}}, "changes": [{{string.Join(", ", changes)}}] }""";

    private static IEnumerable<int> Versions(JsonObject page) => page["items"]!.AsArray().Select(item => item!["version"]!.GetValue<int>());

    private static IEnumerable<string> Ids(JsonObject page) => page["items"]!.AsArray().Select(item => item!["thing"]!["id"]!.GetValue<string>());
}

public sealed class SqliteChangeTests(SqliteApi api) : ChangeSuite(api), IClassFixture<SqliteApi>;

public sealed class PostgreSqlChangeTests(PostgreSqlApi api) : ChangeSuite(api), IClassFixture<PostgreSqlApi>;
