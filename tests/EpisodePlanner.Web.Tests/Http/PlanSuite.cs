using System.Net;
using System.Text.Json.Nodes;

namespace EpisodePlanner.Web.Tests.Http;

/// <summary>The plan over HTTP, and what is written from it. What is expected is our own contract.</summary>
public abstract class PlanSuite(ApiFixture api)
{
    [Fact]
    public async Task Plan_OfTheDemo_IsThatOfTheCommandLine()
    {
        var workshop = await api.Api.ImportDemo();

        var plan = (await api.Api.Get($"{workshop}/plan")).Must(HttpStatusCode.OK);

        var line = await CommandLine.Shell.Run("plan", CommandLine.Papers.Demo, "--now", "2026-11-25T18:00:00Z", "--format", "json");
        var expected = System.Text.Json.Nodes.JsonNode.Parse(line.Output)!.AsObject();
        expected["demoMovedWeeks"] = null; // only the command line moves the dates of a demo
        Assert.Equal(expected.ToJsonString(), plan.Json.ToJsonString());
    }

    [Fact]
    public async Task Silences_OneByOne_AreThoseOfTheWholeAnswer()
    {
        var workshop = await api.Api.ImportDemo();

        var found = (await api.Api.Get($"{workshop}/silences/ferry")).Must(HttpStatusCode.OK);

        var whole = (await api.Api.Get($"{workshop}/silences")).Must(HttpStatusCode.OK).Json["silences"]!.AsArray()
            .Single(silence => silence!["series"]?.GetValue<string>() == "ferry")!;
        Assert.Equal(
            whole["helping"]!.AsArray().Select(remedy => remedy!.ToJsonString()).Order(StringComparer.Ordinal),
            found.Json["found"]!.AsArray().Select(remedy => remedy!.ToJsonString()).Order(StringComparer.Ordinal));
        Assert.NotNull(whole["foreseenSince"]);
        (await api.Api.Get($"{workshop}/silences/nobody")).MustBe(HttpStatusCode.NotFound, "not-found");
        (await api.Api.Get($"{workshop}/silences/channel")).Must(HttpStatusCode.OK);
    }

    [Fact]
    public async Task PublishNow_GivesChangesThatCanBeMade()
    {
        var workshop = await api.Api.ImportDemo();

        var answer = (await api.Api.Get($"{workshop}/publish-now")).Must(HttpStatusCode.OK);

        var series = answer.Json["series"]!.AsArray();
        Assert.Contains(series, one => one!["series"]!.GetValue<string>() == "ferry");
        Assert.All(series, one => Assert.NotNull(one!["publish"]));
        (await api.Api.Get($"{workshop}/publish-now", ("If-None-Match", answer.Tag!))).Must(HttpStatusCode.NotModified);
    }

    [Fact]
    public async Task Plan_AskedForAgain_IsTheSameBytesOr304()
    {
        var workshop = await api.Api.ImportExample();

        var first = (await api.Api.Get($"{workshop}/plan")).Must(HttpStatusCode.OK);
        var second = await api.Api.Get($"{workshop}/plan");

        Assert.Equal((first.Text, first.Tag), (second.Text, second.Tag));
        (await api.Api.Get($"{workshop}/plan", ("If-None-Match", first.Tag!))).Must(HttpStatusCode.NotModified);
    }

    [Fact]
    public async Task Plan_AfterAChange_IsAnother()
    {
        var workshop = await api.Api.ImportExample();
        var before = await api.Api.Get($"{workshop}/plan");

        (await api.Api.Delete($"{workshop}/tasks/fit-wheels", ("If-Match", "*"))).Must(HttpStatusCode.NoContent);
        var after = (await api.Api.Get($"{workshop}/plan", ("If-None-Match", before.Tag!))).Must(HttpStatusCode.OK);

        Assert.Equal(2, before.Json["tasks"]!.AsArray().Count);
        Assert.Single(after.Json["tasks"]!.AsArray());
    }

    [Fact]
    public async Task Plan_WhenAStartHasPassed_IsPlannedAnew()
    {
        await using var server = await ApiServer.Start(api.Databases);
        var workshop = await server.Api.ImportExample();
        var before = await server.Api.Get($"{workshop}/plan");

        server.Clock.Now = server.Clock.Now.AddMinutes(5);
        (await server.Api.Get($"{workshop}/plan", ("If-None-Match", before.Tag!))).Must(HttpStatusCode.NotModified);
        server.Clock.Now = server.Clock.Now.AddDays(2);
        var later = (await server.Api.Get($"{workshop}/plan", ("If-None-Match", before.Tag!))).Must(HttpStatusCode.OK);

        Assert.Equal("2026-11-27T18:05:00+00:00", later.Json["plannedAt"]!.GetValue<string>());
        Assert.Equal("\"1\"", (await server.Api.Get(workshop)).Tag);
    }

    [Theory]
    [InlineData("?schedules=1", HttpStatusCode.OK)]
    [InlineData("?trials=false", HttpStatusCode.OK)]
    [InlineData("?trials=perhaps", HttpStatusCode.BadRequest)]
    [InlineData("?schedules=0", HttpStatusCode.BadRequest)]
    [InlineData("?schedules=201", HttpStatusCode.BadRequest)]
    [InlineData("?schedules=many", HttpStatusCode.BadRequest)]
    [InlineData("?schedules=1&schedules=2", HttpStatusCode.BadRequest)]
    [InlineData("?shedules=1", HttpStatusCode.BadRequest)]
    public async Task Plan_TakesSchedulesWithinLimits(string query, HttpStatusCode status) =>
        (await api.Api.Get($"{await api.Api.ImportExample()}/plan{query}")).Must(status);

    [Fact]
    public async Task Proof_OfAnEpisode_IsNotAfterItsPlan()
    {
        var workshop = await api.Api.ImportExample();
        var planned = (await api.Api.Get($"{workshop}/plan")).Json["episodes"]![0]!;

        var proof = (await api.Api.Get($"{workshop}/plan/proof?seconds=2&episode={(string)planned["id"]!}")).Must(HttpStatusCode.OK).Json;

        Assert.Equal((string)planned["id"]!, (string)proof["episode"]!);
        Assert.True(string.CompareOrdinal((string)proof["earliestDay"]!, (string)proof["plannedDay"]!) <= 0);
        Assert.StartsWith("No plan can publish", (string)proof["says"]!, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", HttpStatusCode.BadRequest)]
    [InlineData("?episode=none", HttpStatusCode.NotFound)]
    [InlineData("?episode=a%20b", HttpStatusCode.BadRequest)]
    [InlineData("?episode=none&seconds=0", HttpStatusCode.BadRequest)]
    [InlineData("?episode=none&seconds=11", HttpStatusCode.BadRequest)]
    public async Task Proof_AskedBadly_IsRefused(string query, HttpStatusCode status) =>
        (await api.Api.Get($"{await api.Api.ImportExample()}/plan/proof{query}")).Must(status);

    [Fact]
    public async Task Proof_OfTheWhole_ClaimsNoLessThanThePlanReaches()
    {
        var proof = (await api.Api.Get($"{await api.Api.ImportExample()}/plan/proof/whole?seconds=1")).Must(HttpStatusCode.OK).Json;

        var parts = proof["parts"]!.AsArray();
        Assert.Equal("late", (string)parts[0]!["part"]!);
        Assert.All(parts, part => Assert.InRange((long)part!["bound"]!, 0, (long)part["reached"]!));
        Assert.All(parts.SkipLast(1), part => Assert.True((bool)part!["isReached"]!));
        Assert.Equal((bool)proof["best"]!, parts.Count == 4 && (bool)parts[3]!["isReached"]!);
        Assert.StartsWith("This plan ", (string)proof["says"]!, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("?seconds=0")]
    [InlineData("?seconds=4")]
    [InlineData("?episode=none")]
    public async Task Proof_OfTheWholeAskedBadly_IsRefused(string query) =>
        (await api.Api.Get($"{await api.Api.ImportExample()}/plan/proof/whole{query}")).Must(HttpStatusCode.BadRequest);

    [Fact]
    public async Task Accept_NeedsThePlanThatWasSeen()
    {
        var workshop = await api.Api.ImportExample();
        var plan = await api.Api.Get($"{workshop}/plan");

        (await api.Api.Post($"{workshop}/plan/accept")).MustBe(HttpStatusCode.PreconditionRequired, "precondition-required");
        (await api.Api.Post($"{workshop}/plan/accept", null, ("If-Match", "\"1.1\""))).MustBe(HttpStatusCode.PreconditionFailed, "stale");
        (await api.Api.Post($"{workshop}/plan/accept", null, ("If-Match", plan.Tag!))).Must(HttpStatusCode.OK);

        var accepted = (await api.Api.Get($"{workshop}/accepted")).Must(HttpStatusCode.OK).Json;
        Assert.Equal(3, accepted["starts"]!.AsArray().Count);
    }

    [Fact]
    public async Task Why_TellsChangesThatWinWhatIsClaimed()
    {
        var workshop = await api.Api.ImportExample();

        var why = (await api.Api.Get($"{workshop}/episodes/trolley-e1/why")).Must(HttpStatusCode.OK);
        (await api.Api.Get($"{workshop}/episodes/trolley-e1/why", ("If-None-Match", why.Tag!))).Must(HttpStatusCode.NotModified);
        (await api.Api.Get($"{workshop}/episodes/nobody/why")).MustBe(HttpStatusCode.NotFound, "not-found");

        // Made as it stands there, the change gives the day that was claimed.
        var best = why.Json["whatIfs"]!.AsArray()[0]!;
        var body = new JsonObject { ["base"] = 1, ["changes"] = new JsonArray(best["change"]!.DeepClone()) };
        (await api.Api.Post($"{workshop}/changes", body.ToJsonString())).Must(HttpStatusCode.OK);
        var plan = (await api.Api.Get($"{workshop}/plan")).Must(HttpStatusCode.OK).Json;
        Assert.StartsWith(
            best["publish"]!.GetValue<string>(),
            plan["episodes"]!.AsArray().Single(e => e!["id"]!.GetValue<string>() == "trolley-e1")!["publish"]!.GetValue<string>(),
            StringComparison.Ordinal);
    }

    [Fact]
    public async Task Plan_AcceptedAndThenDisturbed_TellsWhatMoved()
    {
        var workshop = await api.Api.ImportExample();
        var plan = await api.Api.Get($"{workshop}/plan");
        (await api.Api.Post($"{workshop}/plan/accept", null, ("If-Match", plan.Tag!))).Must(HttpStatusCode.OK);
        Assert.Empty((await api.Api.Get($"{workshop}/plan")).Json["moved"]!.AsArray());

        const string first = "weld-frame";
        var task = (await api.Api.Get($"{workshop}/tasks/{first}")).Json;
        task["notBefore"] = "2026-11-27";
        (await api.Api.Put($"{workshop}/tasks/{first}", task.ToJsonString(), ("If-Match", "*"))).Must(HttpStatusCode.OK);

        var moved = (await api.Api.Get($"{workshop}/plan")).Json["moved"]!.AsArray();
        Assert.Contains(moved, one => one!["stage"]!["task"]!.GetValue<string>() == first);
    }

    [Theory]
    [InlineData(null, "text/markdown")]
    [InlineData("*/*", "text/markdown")]
    [InlineData("text/html", "text/html")]
    [InlineData("text/*;q=0.5, text/html", "text/html")]
    [InlineData("text/markdown;q=0.2, text/html;q=0.1", "text/markdown")]
    [InlineData("text/html;q=0, */*", "text/markdown")]
    public async Task Letter_IsInTheFormThatIsAskedFor(string? accept, string form)
    {
        // Published: RFC 9110 §12.5.1, the most specific range decides, and q=0 is not acceptable.
        var workshop = await api.Api.ImportExample();

        var letter = (await api.Api.Get($"{workshop}/letter", accept is null ? [] : [("Accept", accept)])).Must(HttpStatusCode.OK);

        Assert.Equal(form, letter.MediaType);
        Assert.StartsWith(form == "text/html" ? "<h1>" : "# ", letter.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Outline_IsThereForEpisodesToComeOnly()
    {
        var workshop = await api.Api.ImportExample();

        var outline = (await api.Api.Get($"{workshop}/episodes/trolley-e1/outline")).Must(HttpStatusCode.OK);
        (await api.Api.Get($"{workshop}/episodes/trolley-e1/outline", ("If-None-Match", outline.Tag!))).Must(HttpStatusCode.NotModified);
        (await api.Api.Get($"{workshop}/episodes/trolley-e1/outline", ("If-None-Match", outline.Tag!), ("Accept", "text/html")))
            .Must(HttpStatusCode.OK);
        (await api.Api.Get($"{workshop}/episodes/nobody/outline")).MustBe(HttpStatusCode.NotFound, "not-found");
        (await api.Api.Get($"{workshop}/letter", ("Accept", "image/png"))).MustBe(HttpStatusCode.NotAcceptable, "not-acceptable");
    }
}

public sealed class SqlitePlanTests(SqliteApi api) : PlanSuite(api), IClassFixture<SqliteApi>;

public sealed class PostgreSqlPlanTests(PostgreSqlApi api) : PlanSuite(api), IClassFixture<PostgreSqlApi>;
