using System.Net;
using System.Text.RegularExpressions;
using EpisodePlanner.Planning.Files;
using EpisodePlanner.Web.Tests.CommandLine;
using EpisodePlanner.Web.Tests.Deploy;

namespace EpisodePlanner.Web.Tests.Http;

/// <summary>The description of the API and the page to browse it.</summary>
public sealed partial class ReferenceTests(SqliteApi api) : IClassFixture<SqliteApi>
{
    private const string Linter = "@redocly/cli@2.77.0";

    private static readonly string Kept = Path.Combine(
        Papers.Root, "tests", "EpisodePlanner.Web.Tests", "Snapshots", "openapi.v1.json");

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Description_IsAsKept()
    {
        var description = (await api.Api.Get("/openapi/v1.json")).Must(HttpStatusCode.OK).Text.ReplaceLineEndings("\n") + "\n";
        if (Environment.GetEnvironmentVariable("EPISODEPLANNER_UPDATE") == "1")
        {
            await File.WriteAllTextAsync(Kept, description, Stop);
        }

        Assert.Equal(await File.ReadAllTextAsync(Kept, Stop), description);
    }

    /// <summary>Oracle: Redocly's linter with its strict rules, fetched by npm into a folder of its own.</summary>
    [Fact]
    public async Task Description_IsLintedClean()
    {
        Tool.Need(Tool.Exists("npm"), "npm");
        var folder = Path.Combine(Path.GetTempPath(), "episode-planner-lint", Linter[(Linter.LastIndexOf('@') + 1)..]);
        Directory.CreateDirectory(folder);
        var program = Path.Combine(folder, "node_modules", ".bin", "redocly");
        if (!File.Exists(program))
        {
            var fetched = await Tool.Run("npm", ["install", "--prefix", folder, "--no-audit", "--no-fund", Linter]);
            Tool.Need(fetched.Code == 0, Linter);
        }

        var rules = Path.Combine(Papers.Root, "tests", "EpisodePlanner.Web.Tests", "Http", "redocly.yaml");
        var linted = await Tool.Run(
            program,
            ["lint", "--config", rules, "--format", "stylish", Kept],
            ("REDOCLY_TELEMETRY", "off"),
            ("REDOCLY_SUPPRESS_UPDATE_NOTICE", "true"));

        Assert.True(linted.Code == 0, linted.Output + linted.Error);
    }

    [Fact]
    public void Example_IsSoundAndHasOneOfEachKind()
    {
        var workshop = Example.Workshop;

        Assert.All(Planning.ThingKinds.All, kind => Assert.NotEmpty(kind.All(workshop)));
        Assert.Equal(Example.Canonical, WorkshopFile.Write(WorkshopFile.Read(Example.Canonical).Thing!));
    }

    [Fact]
    public async Task Page_AsksNothingOfOtherHosts()
    {
        var page = (await api.Api.Get("/reference/")).Must(HttpStatusCode.OK).Text;

        Assert.DoesNotMatch(Elsewhere(), page);
        foreach (Match source in Sources().Matches(page))
        {
            (await api.Api.Get($"/reference/{source.Groups[1].Value}")).Must(HttpStatusCode.OK);
        }
    }

    [GeneratedRegex("""(src|href|url)["']?\s*[=:]\s*["'](https?:)?//""")]
    private static partial Regex Elsewhere();

    [GeneratedRegex("src=\"([^\"]+)\"")]
    private static partial Regex Sources();
}
