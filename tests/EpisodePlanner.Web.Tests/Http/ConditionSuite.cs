using System.Net;

namespace EpisodePlanner.Web.Tests.Http;

/// <summary>
/// Conditional requests. Published: RFC 9110 §8.8.3.2 (comparison), §13.1.1 (If-Match), §13.1.2 (If-None-Match), §13.2.2
/// (precedence), §15.4.5 (304), §15.5.13 (412), §9.3.2 (HEAD); RFC 6585 §3 (428).
/// </summary>
public abstract class ConditionSuite(ApiFixture api)
{
    private const string Place = """{ "id": "shed", "name": "Shed", "kind": "bench" }""";

    [Theory]
    [InlineData("If-None-Match", "\"2\"", HttpStatusCode.NotModified, "§13.1.2: one of the listed tags matches")]
    [InlineData("If-None-Match", "W/\"2\"", HttpStatusCode.NotModified, "§13.1.2: weak comparison")]
    [InlineData("If-None-Match", "\"1\", W/\"2\"", HttpStatusCode.NotModified, "§13.1.2: a list")]
    [InlineData("If-None-Match", "*", HttpStatusCode.NotModified, "§13.1.2: * is false where anything is there")]
    [InlineData("If-None-Match", "\"1\"", HttpStatusCode.OK, "§13.1.2: none matches")]
    [InlineData("If-None-Match", "2", HttpStatusCode.BadRequest, "§8.8.3: a tag stands in quotes")]
    [InlineData("If-Match", "\"2\"", HttpStatusCode.OK, "§13.1.1: strong comparison")]
    [InlineData("If-Match", "\"1\"", HttpStatusCode.PreconditionFailed, "§13.1.1: no match")]
    [InlineData("If-Match", "*", HttpStatusCode.OK, "§13.1.1: * is true where anything is there")]
    public async Task Get_UnderACondition(string header, string value, HttpStatusCode status, string rule)
    {
        var path = await Begin();

        var reply = await api.Api.Get(path, (header, value));

        Assert.True(reply.Status == status, rule);
        Assert.True(status != HttpStatusCode.NotModified || (reply.Tag == "\"2\"" && reply.Bytes.Length == 0), "§15.4.5");
    }

    [Fact]
    public async Task Get_UnderBoth_LooksAtIfMatchFirst()
    {
        var path = await Begin();

        // Published: RFC 9110 §13.2.2, steps 1 and 3.
        (await api.Api.Get(path, ("If-Match", "\"1\""), ("If-None-Match", "\"2\""))).Must(HttpStatusCode.PreconditionFailed);
        (await api.Api.Get(path, ("If-Match", "\"2\""), ("If-None-Match", "\"2\""))).Must(HttpStatusCode.NotModified);
    }

    [Fact]
    public async Task Head_IsGetWithoutTheBody()
    {
        var path = await Begin();

        var reply = await api.Api.Send(HttpMethod.Head, path, null, []);

        Assert.Equal((HttpStatusCode.OK, "\"2\"", 0), (reply.Status, reply.Tag, reply.Bytes.Length));
    }

    [Theory]
    [InlineData("If-Match", "\"2\"", HttpStatusCode.OK, "§13.1.1: strong comparison")]
    [InlineData("If-Match", "\"7\", \"2\"", HttpStatusCode.OK, "§13.1.1: a list")]
    [InlineData("If-Match", "*", HttpStatusCode.OK, "§13.1.1: * is true where anything is there")]
    [InlineData("If-Match", "W/\"2\"", HttpStatusCode.PreconditionFailed, "§8.8.3.2: a weak tag never matches strongly")]
    [InlineData("If-Match", "\"1\"", HttpStatusCode.PreconditionFailed, "§13.1.1: no match")]
    [InlineData("If-Match", "\"x\"", HttpStatusCode.PreconditionFailed, "§8.8.3: any characters may stand in a tag")]
    [InlineData("If-Match", "\"2", HttpStatusCode.BadRequest, "§8.8.3: a tag stands in quotes")]
    [InlineData("If-Match", "*, \"2\"", HttpStatusCode.BadRequest, "§13.1.1: * or a list")]
    [InlineData("If-None-Match", "*", HttpStatusCode.PreconditionFailed, "§13.1.2: * is false where anything is there")]
    [InlineData("If-None-Match", "\"1\"", HttpStatusCode.PreconditionRequired, "RFC 6585 §3: nothing guards against a lost change")]
    public async Task Put_UnderACondition(string header, string value, HttpStatusCode status, string rule)
    {
        var path = await Begin();

        var reply = await api.Api.Put(path, Place.Replace("Shed", "Hut", StringComparison.Ordinal), (header, value));

        Assert.True(reply.Status == status, $"{rule}: {reply.Status} {reply.Text}");
    }

    [Theory]
    [InlineData("If-Match", "*", HttpStatusCode.PreconditionFailed, "§13.1.1: * is false where nothing is there")]
    [InlineData("If-Match", "\"2\"", HttpStatusCode.PreconditionFailed, "§13.1.1: nothing is there")]
    [InlineData("If-None-Match", "*", HttpStatusCode.Created, "§13.1.2: * is true where nothing is there")]
    public async Task Put_OfWhatIsNotThere(string header, string value, HttpStatusCode status, string rule)
    {
        var path = await Begin();

        var reply = await api.Api.Put($"{path}-2", Place.Replace("shed", "shed-2", StringComparison.Ordinal), (header, value));

        Assert.True(reply.Status == status, $"{rule}: {reply.Status} {reply.Text}");
    }

    [Fact]
    public async Task WithoutACondition_ChangesAreRefused()
    {
        var path = await Begin();

        (await api.Api.Put(path, Place)).MustBe(HttpStatusCode.PreconditionRequired, "precondition-required");
        (await api.Api.Delete(path)).MustBe(HttpStatusCode.PreconditionRequired, "precondition-required");
    }

    [Fact]
    public async Task Stale_NamesBothVersions()
    {
        var path = await Begin();
        await api.Api.Put(path, Place.Replace("Shed", "Hut", StringComparison.Ordinal), ("If-Match", "\"2\""));

        var stale = (await api.Api.Delete(path, ("If-Match", "\"2\""))).MustBe(HttpStatusCode.PreconditionFailed, "stale");

        Assert.Equal(("\"2\"", "\"3\""), (stale.Json["yours"]!.GetValue<string>(), stale.Json["current"]!.GetValue<string>()));
    }

    [Fact]
    public async Task Delete_OfWhatIsNotThere_LooksAtNoCondition()
    {
        var path = await Begin();

        // Published: RFC 9110 §13.2.1, where the request would not succeed anyway its preconditions are ignored.
        (await api.Api.Delete($"{path}-2", ("If-Match", "\"2\""))).Must(HttpStatusCode.NotFound);
    }

    [Fact]
    public async Task TheSameKey_MakesOnce()
    {
        var workshop = await api.Api.ImportExample();
        var body = """{ "name": "Ann" }""";

        var first = (await api.Api.Post($"{workshop}/people", body, ("Idempotency-Key", "k1"))).Must(HttpStatusCode.Created);
        await api.Api.Put(first.Location!, """{ "name": "Anna" }""", ("If-Match", "*"));
        var again = (await api.Api.Post($"{workshop}/people", body, ("Idempotency-Key", "k1"))).Must(HttpStatusCode.Created);

        Assert.Equal((first.Text, first.Location, first.Tag), (again.Text, again.Location, again.Tag));
        (await api.Api.Post($"{workshop}/people", """{ "name": "Bob" }""", ("Idempotency-Key", "k1")))
            .MustBe(HttpStatusCode.UnprocessableEntity, "key-reused");
        (await api.Api.Post($"{workshop}/people", body, ("Idempotency-Key", "k 1"))).MustBe(HttpStatusCode.BadRequest, "invalid");
    }

    private async Task<string> Begin() =>
        (await api.Api.Post($"{await api.Api.ImportExample()}/places", Place)).Must(HttpStatusCode.Created).Location!;
}

public sealed class SqliteConditionTests(SqliteApi api) : ConditionSuite(api), IClassFixture<SqliteApi>;

public sealed class PostgreSqlConditionTests(PostgreSqlApi api) : ConditionSuite(api), IClassFixture<PostgreSqlApi>;
