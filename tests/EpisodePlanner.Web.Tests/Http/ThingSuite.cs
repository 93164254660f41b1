using System.Net;

namespace EpisodePlanner.Web.Tests.Http;

/// <summary>Things over HTTP. What is expected is our own contract, unless a comment names a source.</summary>
public abstract class ThingSuite(ApiFixture api)
{
    private const string Person = """{ "id": "tom", "name": "Tom", "hours": { "weekly": [{ "days": ["monday"], "from": "19:00", "to": "22:00" }] } }""";

    [Fact]
    public async Task Post_WithAnId_MakesTheThingAndReadsBackEqual()
    {
        var workshop = await api.Api.ImportExample();

        var made = (await api.Api.Post($"{workshop}/people", Person)).Must(HttpStatusCode.Created);

        Assert.Equal($"{workshop}/people/tom", made.Location);
        var read = (await api.Api.Get(made.Location!)).Must(HttpStatusCode.OK);
        Assert.Equal(made.Text, read.Text);
        Assert.Equal("\"2\"", read.Tag);
        Assert.Equal(made.Tag, read.Tag);
    }

    [Fact]
    public async Task Post_WithoutAnId_GetsOneThatSortsByTime()
    {
        var workshop = await api.Api.ImportExample();

        var made = (await api.Api.Post($"{workshop}/people", """{ "name": "Ann" }""")).Must(HttpStatusCode.Created);

        // Published: RFC 9562 §5.7, the version stands in the 13th digit.
        Assert.Equal('7', made.Json["id"]!.GetValue<string>()[14]);
    }

    [Fact]
    public async Task Post_OfAnIdThatIsThere_IsAConflict()
    {
        var workshop = await api.Api.ImportExample();
        await api.Api.Post($"{workshop}/people", Person);

        (await api.Api.Post($"{workshop}/people", Person)).MustBe(HttpStatusCode.Conflict, "conflict");
    }

    [Fact]
    public async Task Post_OfABadBody_TellsEverythingAtOnce()
    {
        var workshop = await api.Api.ImportExample();

        var reply = await api.Api.Post($"{workshop}/tasks", """{ "name": 5, "stages": [{ "hours": -1 }], "wings": 2 }""");

        reply.MustBe(HttpStatusCode.BadRequest, "invalid");
        Assert.Equal(["$.name", "$.stages[0].hours", "$.wings"], reply.Wheres.Order(StringComparer.Ordinal));
    }

    [Fact]
    public async Task Post_OfWhatBreaksARule_SaysWhereInTheWorkshop()
    {
        var workshop = await api.Api.ImportExample();

        var reply = await api.Api.Post($"{workshop}/uploads", """{ "id": "u", "series": "nobody", "date": "2026-11-20" }""");

        reply.MustBe(HttpStatusCode.UnprocessableEntity, "broken-rules");
        Assert.Equal(["$.uploads['u'].series"], reply.Wheres);
    }

    [Theory]
    [InlineData("text/plain", HttpStatusCode.UnsupportedMediaType)]
    [InlineData("application/json; charset=utf-16", HttpStatusCode.UnsupportedMediaType)]
    [InlineData("application/json; charset=UTF-8", HttpStatusCode.Created)]
    public async Task Post_IsTakenAsJsonInUtf8Only(string type, HttpStatusCode status)
    {
        var workshop = await api.Api.ImportExample();

        (await api.Api.Send(HttpMethod.Post, $"{workshop}/people", Person, [], type)).Must(status);
    }

    [Fact]
    public async Task Post_OfMoreThanAMegabyte_IsTooLarge()
    {
        var workshop = await api.Api.ImportExample();

        // Published: RFC 9110 §10.1.1, the client waits for leave to send the body, so that the answer reaches it.
        var reply = await api.Api.Post(
            $"{workshop}/people", $$"""{ "name": "{{new string('x', 1_100_000)}}" }""", ("Expect", "100-continue"));

        reply.MustBe(HttpStatusCode.RequestEntityTooLarge, "too-large");
    }

    [Fact]
    public async Task Put_WithAnotherIdInTheBody_IsRefused()
    {
        var workshop = await api.Api.ImportExample();

        var reply = await api.Api.Put($"{workshop}/people/tim", Person, ("If-None-Match", "*"));

        Assert.Equal(["$.id"], reply.MustBe(HttpStatusCode.BadRequest, "invalid").Wheres);
    }

    [Fact]
    public async Task Put_OfTheSame_KeepsTheVersion()
    {
        var workshop = await api.Api.ImportExample();
        var made = await api.Api.Post($"{workshop}/people", Person);

        var same = await api.Api.Put(made.Location!, Person, ("If-Match", made.Tag!));

        Assert.Equal(made.Tag, same.Must(HttpStatusCode.OK).Tag);
    }

    [Fact]
    public async Task Delete_ThenRead_SaysWhenAndHowItComesBack()
    {
        var workshop = await api.Api.ImportExample();
        var made = await api.Api.Post($"{workshop}/people", Person);
        (await api.Api.Delete(made.Location!, ("If-Match", made.Tag!))).Must(HttpStatusCode.NoContent);

        var gone = (await api.Api.Get(made.Location!)).MustBe(HttpStatusCode.Gone, "gone");
        Assert.Equal("2026-11-25T18:00:00Z", gone.Json["since"]!.GetValue<string>());
        (await api.Api.Post(gone.Json["restore"]!.GetValue<string>())).Must(HttpStatusCode.OK);
        Assert.Equal(made.Text, (await api.Api.Get(made.Location!)).Must(HttpStatusCode.OK).Text);
    }

    [Fact]
    public async Task Delete_OfWhatOthersNeed_SaysWhoNeedsIt()
    {
        var workshop = await api.Api.ImportExample();
        var series = (await api.Api.Get($"{workshop}/series")).Json["items"]![0]!["thing"]!["id"]!.GetValue<string>();

        var reply = await api.Api.Delete($"{workshop}/series/{series}", ("If-Match", "*"));

        reply.MustBe(HttpStatusCode.UnprocessableEntity, "broken-rules");
    }

    [Fact]
    public async Task ToldDates_AreKeptForEver()
    {
        var workshop = await api.Api.ImportExample();
        var episode = (await api.Api.Get($"{workshop}/episodes")).Json["items"]![0]!["thing"]!["id"]!.GetValue<string>();
        var told = $$"""{ "id": "t", "episode": "{{episode}}", "date": "2026-12-24", "toldOn": "2026-11-25", "to": "supporters" }""";
        var made = (await api.Api.Put($"{workshop}/told-dates/t", told, ("If-None-Match", "*"))).Must(HttpStatusCode.Created);

        var other = told.Replace("12-24", "12-31", StringComparison.Ordinal);
        (await api.Api.Put(made.Location!, other, ("If-Match", made.Tag!))).MustBe(HttpStatusCode.Conflict, "conflict");
        (await api.Api.Delete(made.Location!, ("If-Match", made.Tag!))).MustBe(HttpStatusCode.Conflict, "conflict");
        (await api.Api.Put(made.Location!, told, ("If-Match", made.Tag!))).Must(HttpStatusCode.OK);
    }

    [Theory]
    [InlineData("people/nobody", HttpStatusCode.NotFound)]
    [InlineData("people/-", HttpStatusCode.NotFound)]
    [InlineData("wings", HttpStatusCode.NotFound)]
    public async Task Get_OfWhatIsNotThere_IsNotFound(string path, HttpStatusCode status)
    {
        var workshop = await api.Api.ImportExample();

        (await api.Api.Get($"{workshop}/{path}")).MustBe(status, "not-found");
        (await api.Api.Get($"{ApiClient.Root}/workshops/nobody/{path}")).MustBe(status, "not-found");
    }
}

public sealed class SqliteThingTests(SqliteApi api) : ThingSuite(api), IClassFixture<SqliteApi>;

public sealed class PostgreSqlThingTests(PostgreSqlApi api) : ThingSuite(api), IClassFixture<PostgreSqlApi>;
