using System.Text.RegularExpressions;
using System.Xml.Linq;
using EpisodePlanner.Web.Tests.CommandLine;

namespace EpisodePlanner.Web.Tests.House;

/// <summary>Holds the layout of the house by its project files.</summary>
public sealed partial class HouseTests
{
    private const string Analyzers = "Microsoft.CodeAnalysis.BannedApiAnalyzers";

    /// <summary>Every source project, those to come included: what it may see and which packages it may use.</summary>
    private static readonly IReadOnlyDictionary<string, (string[] Sees, string[] Packages)> Rules =
        new Dictionary<string, (string[] Sees, string[] Packages)>
        {
            ["Scheduling"] = ([], []),
            ["Planning"] = (["Scheduling"], ["Ical.Net", "MathNet.Numerics", "NodaTime"]),
            ["Proving"] = (["Scheduling", "Planning"], ["Google.OrTools", "Google.Protobuf"]),
            ["Writing"] = (["Planning"], ["HtmlSanitizer", "Markdig"]),
            ["Data"] = (["Planning"], ["Microsoft.EntityFrameworkCore.Relational"]),
            ["Data.Sqlite"] = (["Data"], ["Microsoft.EntityFrameworkCore.Sqlite", "Microsoft.EntityFrameworkCore.Design"]),
            ["Data.PostgreSql"] = (
                ["Data"],
                [
                    "Npgsql.EntityFrameworkCore.PostgreSQL", "Npgsql.EntityFrameworkCore.PostgreSQL.NodaTime",
                    "Microsoft.EntityFrameworkCore.Design",
                ]),
            ["Web"] = (
                ["Scheduling", "Planning", "Proving", "Writing", "Data", "Data.Sqlite", "Data.PostgreSql"],
                [
                    "Microsoft.AspNetCore.OpenApi", "Scalar.AspNetCore", "SkiaSharp", "SkiaSharp.NativeAssets.Linux.NoDependencies",
                    "Svg.Skia", "System.CommandLine",
                ]),
        };

    private static IEnumerable<ProjectFile> Sources => ProjectFile.In("src");

    private static IEnumerable<ProjectFile> Tests => ProjectFile.In("tests");

    private static IEnumerable<string> SourceCode => Directory
        .EnumerateFiles(Path.Combine(Papers.Root, "src"), "*.cs", SearchOption.AllDirectories)
        .Where(file => !Built().IsMatch(file));

    [Fact]
    public void Projects_AreThoseOfTheHouse() =>
        Assert.All(Sources, project => Assert.Contains(project.Name, Rules.Keys));

    [Fact]
    public void Projects_SeeOnlyWhomTheyMay() => Assert.All(
        Sources, project => Assert.Empty(project.Sees.Except(Rules[project.Name].Sees)));

    [Fact]
    public void Projects_UseOnlyThePackagesListed() => Assert.All(
        Sources, project => Assert.Empty(project.Packages.Except([.. Rules[project.Name].Packages, Analyzers])));

    [Fact]
    public void Checking_SeesOnlyScheduling() =>
        Assert.Equal(["Scheduling"], Tests.Single(project => project.Name == "Checking").Sees);

    [Fact]
    public void Databases_SeesNoSourceProject() =>
        Assert.Empty(Tests.Single(project => project.Name == "Databases").Sees);

    [Fact]
    public void TestProjects_ReachPostgreSqlOnlyThroughDatabases() => Assert.Equal(
        ["Databases"], Tests.Where(project => project.Packages.Any(IsOfPostgreSql)).Select(project => project.Name));

    [Fact]
    public void SourceProjects_NeverSeeATestProject() => Assert.All(
        Sources, project => Assert.DoesNotContain(project.References, reference => reference.Contains("tests/", StringComparison.Ordinal)));

    [Theory]
    [InlineData("Scheduling")]
    [InlineData("Planning")]
    public void Arithmetic_IsCheckedForOverflow(string name) => Assert.Equal(
        "true", Sources.Single(project => project.Name == name).Property("CheckForOverflowUnderflow"), ignoreCase: true);

    [Fact]
    public void SourceProjects_HaveATestProjectEach() => Assert.All(
        Sources, project => Assert.Contains(Tests, test => test.Name == $"{project.Name}.Tests"));

    [Fact]
    public void Projects_AreAllInTheSolution()
    {
        var solution = File.ReadAllText(Path.Combine(Papers.Root, "EpisodePlanner.sln"));

        Assert.All(Sources.Concat(Tests), project => Assert.Contains($"EpisodePlanner.{project.Name}.csproj", solution, StringComparison.Ordinal));
    }

    [Fact]
    public void Projects_PinNoVersionOfTheirOwn() => Assert.All(
        Sources.Concat(Tests), project => Assert.Empty(project.Versions));

    [Fact]
    public void SourceCode_SilencesNoWarning() => Assert.All(
        SourceCode.Where(file => !Generated().IsMatch(file)), file => Assert.DoesNotMatch(Silencing(), File.ReadAllText(file)));

    [Fact]
    public void SourceCode_NamesProvidersAndProofsOnlyInComposition() => Assert.All(
        SourceCode.Where(file => IsIn(file, "EpisodePlanner.Web") && !IsIn(file, Path.Combine("EpisodePlanner.Web", "Composition"))),
        file => Assert.DoesNotMatch(Providers(), File.ReadAllText(file)));

    [Fact]
    public void SourceCode_ReadsTheClockOnlyInComposition() => Assert.All(
        SourceCode.Where(file => !IsIn(file, Path.Combine("EpisodePlanner.Web", "Composition"))),
        file => Assert.DoesNotContain("TimeProvider.System", File.ReadAllText(file), StringComparison.Ordinal));

    private static bool IsOfPostgreSql(string package) =>
        package.StartsWith("Npgsql", StringComparison.Ordinal) || package.StartsWith("Testcontainers", StringComparison.Ordinal);

    private static bool IsIn(string file, string folder) =>
        file.StartsWith(Path.Combine(Papers.Root, "src", folder) + Path.DirectorySeparatorChar, StringComparison.Ordinal);

    [GeneratedRegex(@"[\\/](obj|bin)[\\/]")]
    private static partial Regex Built();

    /// <summary>Migrations are written by a tool, and say so in .editorconfig.</summary>
    [GeneratedRegex(@"[\\/]Migrations[\\/]")]
    private static partial Regex Generated();

    [GeneratedRegex(@"#pragma\s+warning\s+disable|SuppressMessage|#nullable\s+disable")]
    private static partial Regex Silencing();

    [GeneratedRegex(@"EpisodePlanner\.(Proving|Data\.(Sqlite|PostgreSql))")]
    private static partial Regex Providers();
}

/// <summary>A project file, read as XML.</summary>
internal sealed record ProjectFile(string Name, XDocument Document)
{
    public IReadOnlyList<string> References =>
        [.. Document.Descendants("ProjectReference").Select(r => r.Attribute("Include")!.Value.Replace('\\', '/'))];

    public IReadOnlyList<string> Sees => [.. References.Select(NameOf)];

    public IReadOnlyList<string> Packages => [.. Document.Descendants("PackageReference").Select(r => r.Attribute("Include")!.Value)];

    public IReadOnlyList<XAttribute> Versions => [.. Document.Descendants("PackageReference").Attributes("Version")];

    public string? Property(string name) => Document.Descendants(name).SingleOrDefault()?.Value;

    public static IEnumerable<ProjectFile> In(string folder) => Directory
        .EnumerateFiles(Path.Combine(Papers.Root, folder), "*.csproj", SearchOption.AllDirectories)
        .Order(StringComparer.Ordinal)
        .Select(path => new ProjectFile(NameOf(path), XDocument.Load(path)));

    private static string NameOf(string path) => Path.GetFileNameWithoutExtension(path).Replace("EpisodePlanner.", "", StringComparison.Ordinal);
}
