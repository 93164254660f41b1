using System.Net;
using System.Text;
using EpisodePlanner.Data;
using EpisodePlanner.Planning;
using EpisodePlanner.Web.Serving;
using Microsoft.AspNetCore.Http;
using NodaTime;

namespace EpisodePlanner.Web.Tests.Serving;

/// <summary>Expectations: RFC 9457 for the form; the kinds are our own.</summary>
public sealed class ProblemTests(GuardedPlanner guarded) : IClassFixture<GuardedPlanner>
{
    public static TheoryData<string> Names => new(ProblemTypes.All.Select(type => type.Name));

    private Task<HttpResponseMessage> AnswerOf(Func<IResult> handler) => guarded.AnswerOf(handler);

    private Task<HttpResponseMessage> AnswerOf(Exception thrown) => AnswerOf(() => throw thrown);

    [Theory]
    [MemberData(nameof(Names))]
    public async Task Problem_EveryKind_IsWrittenAndExplainedUnderItsAddress(string name)
    {
        var type = ProblemTypes.Find(name)!;
        var problem = await (await AnswerOf(() => Problems.Of(type, "So it is."))).MustBe(type);
        var explanation = await guarded.Planner.Client.GetStringAsync((string)problem["type"]!, TestContext.Current.CancellationToken);

        Assert.Equal("So it is.", (string?)problem["detail"]);
        Assert.Equal(4, problem.Count);
        Assert.Contains(type.Title, WebUtility.HtmlDecode(explanation), StringComparison.Ordinal);
        Assert.Contains(type.Explanation, WebUtility.HtmlDecode(explanation), StringComparison.Ordinal);
    }

    [Fact]
    public void Types_AreToldApart()
    {
        Assert.Equal(ProblemTypes.All.Count, ProblemTypes.All.Select(type => type.Name).Distinct().Count());
        Assert.Equal(ProblemTypes.All.Count, ProblemTypes.All.Select(type => type.Title).Distinct().Count());
        Assert.All(ProblemTypes.All, type => Assert.Matches("^[a-z]+(-[a-z]+)*$", type.Name));
        Assert.All(ProblemTypes.All, type => Assert.InRange(type.Status, 400, 599));
    }

    [Fact]
    public async Task Invalid_NamesEveryPlace()
    {
        var answer = await AnswerOf(() => Problems.Invalid(
            [new Reason("$.stages[0].hours", "Write 0 to 10,000."), new Reason("$.name", "A name is missing; “weld”, say.")]));

        var problem = await answer.MustBe(ProblemTypes.Invalid);

        Assert.Equal(
            """[{"where":"$.stages[0].hours","says":"Write 0 to 10,000."},{"where":"$.name","says":"A name is missing; “weld”, say."}]""",
            problem["errors"]!.ToJsonString(new() { Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping }));
    }

    [Fact]
    public async Task Stale_NamesBothVersions()
    {
        var answer = await AnswerOf(() => Problems.Stale(
            "Weld was changed.", "\"12\"", "\"17\"", [new ProblemThing("tasks", "weld", "\"17\""), new ProblemThing("tasks", "cut", null)]));

        var problem = await answer.MustBe(ProblemTypes.Stale);

        Assert.Equal(("\"12\"", "\"17\""), ((string?)problem["yours"], (string?)problem["current"]));
        Assert.Equal(["kind", "id", "current"], problem["things"]![0]!.AsObject().Select(member => member.Key));
        Assert.Equal(["kind", "id"], problem["things"]![1]!.AsObject().Select(member => member.Key));
    }

    [Fact]
    public async Task Gone_SaysSinceWhenAndHowToRestore()
    {
        var answer = await AnswerOf(() => Problems.Gone("The task 'weld'", Instant.FromUtc(2026, 11, 25, 18, 0), "/api/v1/x/restore"));

        var problem = await answer.MustBe(ProblemTypes.Gone);

        Assert.Equal(("2026-11-25T18:00:00Z", "/api/v1/x/restore"), ((string?)problem["since"], (string?)problem["restore"]));
    }

    [Fact]
    public async Task Thrown_ByMistake_IsInternalAndTellsNothing()
    {
        var answer = await AnswerOf(new InvalidOperationException("The secret is 42."));

        var problem = await answer.MustBe(ProblemTypes.Internal);

        Assert.DoesNotContain("42", problem.ToJsonString(), StringComparison.Ordinal);
        Assert.NotNull(problem["trace"]);
    }

    [Theory]
    [InlineData(StorageTrouble.Locked, "1")]
    [InlineData(StorageTrouble.NotReady, "1")]
    [InlineData(StorageTrouble.Away, "5")]
    [InlineData(StorageTrouble.Full, "60")]
    [InlineData(StorageTrouble.ReadOnly, "60")]
    [InlineData(StorageTrouble.Newer, "60")]
    [InlineData(StorageTrouble.Damaged, "60")]
    public async Task Thrown_ByTheDatabase_IsUnavailableForAWhile(StorageTrouble trouble, string seconds)
    {
        var answer = await AnswerOf(new StorageTroubleException(trouble, "The disk is full; make room.", new IOException("/secret")));

        var problem = await answer.MustBe(ProblemTypes.StorageUnavailable);

        Assert.Equal(("The disk is full; make room.", seconds), ((string?)problem["detail"], answer.Header("Retry-After")));
    }

    [Theory]
    [InlineData(400, "malformed")]
    [InlineData(408, "timed-out")]
    [InlineData(413, "too-large")]
    public async Task Thrown_AboutTheRequest_HasItsKind(int status, string name) =>
        await (await AnswerOf(new BadHttpRequestException("Too slow.", status))).MustBe(ProblemTypes.Find(name)!);

    [Theory]
    [InlineData(400, "malformed")]
    [InlineData(404, "not-found")]
    [InlineData(406, "not-acceptable")]
    [InlineData(409, "conflict")]
    [InlineData(415, "unsupported-media")]
    [InlineData(418, "malformed")]
    [InlineData(428, "precondition-required")]
    [InlineData(501, "internal")]
    public async Task Status_WithoutABody_BecomesItsProblem(int status, string name) =>
        await (await AnswerOf(() => TypedResults.StatusCode(status))).MustBe(ProblemTypes.Find(name)!);

    [Fact]
    public async Task Nothing_AtTheAddress_IsNotFound()
    {
        var planner = guarded.Planner;

        await (await planner.Get("/api/v1/nothing")).MustBe(ProblemTypes.NotFound);
        await (await planner.Get("/problems/nothing")).MustBe(ProblemTypes.NotFound);
    }

    [Fact]
    public async Task Method_ThatIsNotThere_NamesThoseThatAre()
    {
        var answer = await guarded.Planner.Get($"{GuardedPlanner.Path}-put");

        await answer.MustBe(ProblemTypes.WrongMethod);
        Assert.Equal("PUT", answer.Header("Allow"));
    }

    [Fact]
    public async Task MediaType_ThatIsNotRead_IsUnsupported()
    {
        var answer = await guarded.Planner.Send(HttpMethod.Post, $"{GuardedPlanner.Path}-json", new StringContent("a=b", Encoding.UTF8, "text/plain"));

        await answer.MustBe(ProblemTypes.UnsupportedMedia);
    }

    [Fact]
    public async Task Head_HasNoBody()
    {
        var planner = guarded.Planner;

        var answer = await planner.Send(HttpMethod.Head, "/api/v1/nothing");

        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
        Assert.Empty(await answer.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken));
    }
}
