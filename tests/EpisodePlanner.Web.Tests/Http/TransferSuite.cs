using System.Net;
using System.Text;

namespace EpisodePlanner.Web.Tests.Http;

/// <summary>Whole workshops over HTTP. What is expected is our own contract.</summary>
public abstract class TransferSuite(ApiFixture api)
{
    [Fact]
    public async Task Export_OfACanonicalFile_IsTheFileToTheByte()
    {
        var workshop = await api.Api.Import(Encoding.UTF8.GetString(Example.Canonical));

        Assert.Equal(Example.Canonical, (await api.Api.Get($"{workshop}/export")).Must(HttpStatusCode.OK).Bytes);
    }

    [Fact]
    public async Task Preview_OfANewWorkshop_CountsAndChangesNothing()
    {
        var before = (await api.Api.Get($"{ApiClient.Root}/workshops")).Text;

        var preview = (await api.Api.Post($"{ApiClient.Root}/imports/preview", Example.Text)).Must(HttpStatusCode.OK).Json;

        var tasks = preview["kinds"]!.AsArray().Single(kind => kind!["kind"]!.GetValue<string>() == "tasks")!;
        Assert.Equal(2, tasks["added"]!.GetValue<int>());
        Assert.Equal("trolley-e1", preview["nextUploadAfter"]!["episode"]!.GetValue<string>());
        Assert.Null(preview["nextUploadBefore"]);
        Assert.Equal(before, (await api.Api.Get($"{ApiClient.Root}/workshops")).Text);
    }

    [Fact]
    public async Task Import_IntoAWorkshop_IsOneChangeThatCanBeUndone()
    {
        var workshop = await api.Api.ImportExample();
        var before = (await api.Api.Get($"{workshop}/export")).Text;
        var file = Example.Text
            .Replace("\"weld frame\"", "\"weld the frame\"", StringComparison.Ordinal)
            .Replace("\"id\": \"calendar\"", "\"id\": \"poster\"", StringComparison.Ordinal);

        var preview = (await api.Api.Post($"{workshop}/import/preview", file)).Must(HttpStatusCode.OK).Json;
        (await api.Api.Post($"{workshop}/import", file)).MustBe(HttpStatusCode.PreconditionRequired, "precondition-required");
        (await api.Api.Post($"{workshop}/import", file, ("If-Match", "\"9\""))).MustBe(HttpStatusCode.PreconditionFailed, "stale");
        (await api.Api.Post($"{workshop}/import", file, ("If-Match", $"\"{preview["version"]}\""))).Must(HttpStatusCode.OK);

        var kinds = preview["kinds"]!.AsArray().ToDictionary(
            kind => kind!["kind"]!.GetValue<string>(), kind => $"{kind!["added"]} {kind["changed"]} {kind["removed"]}");
        Assert.Equal(("0 1 0", "1 0 1"), (kinds["tasks"], kinds["timedLines"]));
        Assert.Equal(Canonical(file), (await api.Api.Get($"{workshop}/export")).Text);
        (await api.Api.Post($"{workshop}/undo")).Must(HttpStatusCode.OK);
        Assert.Equal(before, (await api.Api.Get($"{workshop}/export")).Text);
    }

    [Fact]
    public async Task Import_OfABadFile_TellsEverythingAtOnce()
    {
        var reply = await api.Api.Post($"{ApiClient.Root}/imports", """{ "format": 1, "name": "", "wings": 2 }""");

        Assert.Equal(["$.name", "$.wings", "$.zone"], reply.MustBe(HttpStatusCode.BadRequest, "invalid").Wheres.Order(StringComparer.Ordinal));
    }

    [Fact]
    public async Task Import_WithTheSameKey_MakesOneWorkshop()
    {
        var first = (await api.Api.Post($"{ApiClient.Root}/imports", Example.Text, ("Idempotency-Key", "i"))).Must(HttpStatusCode.Created);
        var again = (await api.Api.Post($"{ApiClient.Root}/imports", Example.Text, ("Idempotency-Key", "i"))).Must(HttpStatusCode.Created);

        Assert.Equal(first.Location, again.Location);
    }

    [Fact]
    public async Task Workshop_IsMadeRenamedDeletedAndBroughtBack()
    {
        var made = (await api.Api.Post($"{ApiClient.Root}/workshops", """{ "name": "Hut", "zone": "Europe/Oslo" }""")).Must(HttpStatusCode.Created);
        var renamed = (await api.Api.Put(made.Location!, """{ "name": "Hall", "zone": "Europe/Oslo" }""", ("If-Match", made.Tag!)))
            .Must(HttpStatusCode.OK);
        (await api.Api.Delete(made.Location!, ("If-Match", made.Tag!))).MustBe(HttpStatusCode.PreconditionFailed, "stale");
        (await api.Api.Delete(made.Location!, ("If-Match", renamed.Tag!))).Must(HttpStatusCode.NoContent);

        var gone = (await api.Api.Get($"{made.Location}/plan")).MustBe(HttpStatusCode.Gone, "gone");
        (await api.Api.Post(gone.Json["restore"]!.GetValue<string>())).Must(HttpStatusCode.OK);
        Assert.Equal("Hall", (await api.Api.Get(made.Location!)).Must(HttpStatusCode.OK).Json["name"]!.GetValue<string>());
        (await api.Api.Get($"{made.Location}/plan")).Must(HttpStatusCode.OK);
        (await api.Api.Post($"{ApiClient.Root}/workshops", """{ "name": "Hut", "zone": "Europe/Atlantis" }"""))
            .MustBe(HttpStatusCode.UnprocessableEntity, "broken-rules");
    }

    private static string Canonical(string file)
    {
        var read = Planning.Files.WorkshopFile.Read(Encoding.UTF8.GetBytes(file));
        return Encoding.UTF8.GetString(Planning.Files.WorkshopFile.Write(read.Thing!));
    }
}

public sealed class SqliteTransferTests(SqliteApi api) : TransferSuite(api), IClassFixture<SqliteApi>;

public sealed class PostgreSqlTransferTests(PostgreSqlApi api) : TransferSuite(api), IClassFixture<PostgreSqlApi>;
