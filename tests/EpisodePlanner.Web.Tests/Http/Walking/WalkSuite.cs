using System.Net;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using EpisodePlanner.Planning;
using EpisodePlanner.Planning.Files;
using Json.Schema;

namespace EpisodePlanner.Web.Tests.Http.Walking;

/// <summary>
/// Every operation of the description, asked with bodies made from its schemas: each succeeds with an answer that its
/// schema describes, and what was sent reads back equal. Oracle for answers: JsonSchema.Net (JSON Schema 2020-12, the
/// dialect of OpenAPI 3.1).
/// </summary>
public abstract class WalkSuite(ApiFixture api)
{
    private const int Walks = 2;

    [Fact]
    public async Task EveryOperation_SucceedsAndReadsBackEqual()
    {
        var description = new ApiDescription((await api.Api.Get("/openapi/v1.json")).Must(HttpStatusCode.OK).Json);
        var file = await File.ReadAllTextAsync(Example.Path, TestContext.Current.CancellationToken);
        var failures = new List<string>();
        foreach (var operation in description.Operations)
        {
            for (var seed = 0; seed < (operation.Body is null ? 1 : Walks); seed++)
            {
                await Walk(new Walker(api.Api, description, file, seed), operation, failures);
            }
        }

        Assert.True(failures.Count == 0, string.Join("\n\n", failures));
        Assert.True(description.Operations.Count > 80);
    }

    private async Task Walk(Walker walker, Operation operation, List<string> failures)
    {
        try
        {
            var step = await walker.Walk(operation);
            Succeeds(step);
            await ReadsBack(step);
        }
        catch (Exception failure) when (failure is Xunit.Sdk.XunitException or InvalidOperationException or KeyNotFoundException)
        {
            failures.Add($"{operation.Id}: {failure.Message}");
        }
    }

    private static void Succeeds(Step step)
    {
        Assert.True(step.Reply.Status < HttpStatusCode.MultipleChoices, $"{step.Path} {step.Body}: {step.Reply.Text}");
        if (step.Operation.Answer((int)step.Reply.Status) is { } schema)
        {
            using var answer = JsonDocument.Parse(step.Reply.Bytes);
            var result = Schema(schema, step.Operation.Description).Evaluate(
                answer.RootElement, new EvaluationOptions { OutputFormat = OutputFormat.List });
            Assert.True(result.IsValid, $"{step.Path} answered what it does not describe: {step.Reply.Text}");
        }
    }

    private async Task ReadsBack(Step step)
    {
        if (step.Operation.Method == HttpMethod.Delete)
        {
            Assert.True((await api.Api.Get(step.Path)).Status is HttpStatusCode.NotFound or HttpStatusCode.Gone, "Still there.");
        }

        var address = step.Operation.Method == HttpMethod.Put ? step.Path : step.Reply.Location;
        if (address is null || step.Body is null)
        {
            return;
        }

        var read = (await api.Api.Get(address)).Must(HttpStatusCode.OK);
        Assert.Equal(step.Reply.Text, read.Text);
        Assert.True(IsSame(step.Operation.Body!, step.Body, read), $"{step.Body} read back as {read.Text}");
    }

    /// <summary>Equal as the planner's own reader reads both, so that what is left out is what it stands for.</summary>
    private static bool IsSame(string schema, string sent, Reply read)
    {
        var body = Encoding.UTF8.GetBytes(sent);
        var kind = ThingKinds.All.FirstOrDefault(kind => WorkshopSchema.NameOf(kind.Type) == schema);
        return kind is not null ? kind.Write(kind.Read(body, out _)!).AsSpan().SequenceEqual(kind.Write(kind.Read(read.Bytes, out _)!))
            : schema == "settings" ? WorkshopFile.Read<Settings>(body).Thing == WorkshopFile.Read<Settings>(read.Bytes).Thing
            : schema == "acceptedPlan" ? WorkshopFile.Read<AcceptedPlan>(body).Thing == WorkshopFile.Read<AcceptedPlan>(read.Bytes).Thing
            : JsonNode.Parse(sent)!["name"]!.GetValue<string>() == read.Json["name"]!.GetValue<string>();
    }

    private static JsonSchema Schema(JsonNode schema, ApiDescription description)
    {
        var root = new JsonObject { ["components"] = description.Root["components"]!.DeepClone() };
        root["components"]!["schemas"]!["change"]!.AsObject().Remove("discriminator"); // OpenAPI's own keyword
        root["$defs"] = root["components"]!["schemas"]!.DeepClone();
        root.Remove("components");
        root["$ref"] = schema["$ref"]!.DeepClone();
        return JsonSchema.FromText(root.ToJsonString().Replace("#/components/schemas/", "#/$defs/", StringComparison.Ordinal));
    }
}

public sealed class SqliteWalkTests(SqliteApi api) : WalkSuite(api), IClassFixture<SqliteApi>;

public sealed class PostgreSqlWalkTests(PostgreSqlApi api) : WalkSuite(api), IClassFixture<PostgreSqlApi>;
