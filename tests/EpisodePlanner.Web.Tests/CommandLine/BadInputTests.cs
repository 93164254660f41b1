using System.Text;

namespace EpisodePlanner.Web.Tests.CommandLine;

public sealed class BadInputTests : IDisposable
{
    private const string Work = "\"stages\": [{ \"kind\": \"attended\", \"hours\": 2 }]";
    private readonly Papers papers = new();

    public void Dispose() => papers.Dispose();

    /// <summary>Both commands refuse the file with these words, each error on a line that names file and place.</summary>
    private static async Task Refused(string file, params string[] words)
    {
        foreach (var command in (string[])["check", "plan"])
        {
            var answer = await Shell.Run(command, file);

            Assert.Equal(2, answer.Code);
            Assert.All(answer.Error.TrimEnd('\n').Split('\n'), line => Assert.StartsWith($"{file}: ", line, StringComparison.Ordinal));
            Assert.All(words, word => Assert.Contains(word, answer.Error, StringComparison.OrdinalIgnoreCase));
        }
    }

    [Fact]
    public Task Circle_NamesItsMembers() => Refused(
        papers.Workshop($$"""[{ "id": "a", "name": "cut", {{Work}}, "links": [{ "task": "b" }] }, { "id": "b", "name": "weld", {{Work}}, "links": [{ "task": "a" }] }]"""),
        "$.tasks", "cut", "weld");

    [Fact]
    public Task UnknownReference_NamesTheNearest() => Refused(
        papers.Workshop($$"""[{ "id": "weld", "name": "weld", "milestone": "m", {{Work}} }, { "id": "a", "name": "cut", {{Work}}, "links": [{ "task": "wed" }] }]"""),
        "$.tasks[1].links[0].task", "'weld'");

    [Theory]
    [InlineData("-1")]
    [InlineData("10001")]
    public Task AbsurdHours_AreRefused(string hours) => Refused(
        papers.Workshop($$"""[{ "id": "a", "name": "cut", "stages": [{ "kind": "attended", "hours": {{hours}} }] }]"""),
        "$.tasks[0].stages[0].hours", "10,000");

    [Fact]
    public Task EveryError_IsToldAtOnce() => Refused(
        papers.Workshop("""[{ "id": "a", "name": "", "stages": [{ "kind": "attended", "hours": -1, "colour": "red" }] }]"""),
        "$.tasks[0].name", "$.tasks[0].stages[0].hours", "$.tasks[0].stages[0].colour");

    [Fact]
    public Task StationNeverOpen_SaysWhichTaskAndWhy() => Refused(
        papers.Workshop(
            """[{ "id": "a", "name": "sand the hull", "milestone": "m", "stages": [{ "kind": "attended", "hours": 2, "needs": [["bench"]] }] }]""",
            places: """[{ "id": "bench", "name": "The bench", "kind": "bench", "hours": { "weekly": [] } }]"""),
        "$.tasks", "The bench");

    [Fact]
    public Task RunThatNeverFits_SaysWhatWouldHelp() => Refused(
        papers.Workshop(
            """[{ "id": "a", "name": "print the hull", "milestone": "m", "stages": [{ "kind": "run", "hours": 14, "needs": [["printer"]] }] }]""",
            machines: """[{ "id": "printer", "name": "The printer", "kind": "printer" }]"""),
        "$.tasks['a']", "print the hull", "run alone");

    [Fact]
    public Task RouterAllowedAlone_IsRefused() => Refused(
        papers.Workshop(machines: """[{ "id": "router", "name": "The router", "kind": "router", "mayRunAlone": true }]"""),
        "$.machines[0].mayRunAlone", "router");

    [Fact]
    public Task EmptyWorkshop_SaysWhatToTypeFirst() => Refused(
        papers.Write("""{ "format": 1, "name": "Shed", "zone": "Etc/UTC" }"""), "$.series", "Type first");

    [Fact]
    public Task EmptyFile_IsRefused() => Refused(papers.Write(""), "$:");

    [Fact]
    public Task DateOutOfRange_IsRefused() => Refused(
        papers.Workshop($$"""[{ "id": "a", "name": "cut", {{Work}}, "neededBy": "2027-02-30" }]"""), "$.tasks[0].neededBy");

    [Fact]
    public Task UnknownZone_IsRefused() => Refused(
        papers.Write("""{ "format": 1, "name": "Shed", "zone": "Europe/Dublim" }"""), "$.zone", "Europe/Dublin");

    [Fact]
    public Task SlotRuleThatNeverOccurs_IsRefused() => Refused(
        papers.Workshop(more: """, "slotRules": [{ "id": "r", "from": "2026-01-01", "at": "18:00", "rule": "FREQ=YEARLY;BYMONTH=2;BYMONTHDAY=30" }]"""),
        "$.slotRules[0].rule");

    [Fact]
    public Task DuplicateMember_IsRefused() => Refused(papers.Write("""{ "format": 1, "name": "a", "name": "b", "zone": "Etc/UTC" }"""), "$.name");

    [Fact]
    public Task WrongEncoding_IsRefused() => Refused(
        papers.Write([.. Encoding.UTF8.GetBytes("""{ "format": 1, "name": """), .. "\"Sk\xfcr\" }"u8[..3], 0xfc, 0xff]), "UTF-8");

    [Fact]
    public Task Utf16_IsRefused() => Refused(
        papers.Write([0xff, 0xfe, .. Encoding.Unicode.GetBytes("""{ "format": 1 }""")]), "UTF-8");

    [Fact]
    public Task DeepNesting_IsRefused() => Refused(papers.Write(new string('[', 100_000)), "$");

    [Fact]
    public Task TenMegabytes_IsRefused() => Refused(
        papers.Write(new byte[20 * 1024 * 1024]), "20,971,520 bytes", "at most 10,485,760");

    [Fact]
    public async Task Missing_IsRefused() => await Refused(Path.Combine(papers.Folder, "none.json"), "no such file");

    [Fact]
    public async Task Folder_IsRefused() => await Refused(papers.Folder, "folder");

    [Fact]
    public async Task ImpossibleWork_IsToldAndTheRestIsPlanned()
    {
        var file = papers.Workshop(
            $$"""[{ "id": "a", "name": "cut", "milestone": "m", {{Work}} }, { "id": "b", "name": "print the hull", "stages": [{ "kind": "run", "hours": 14, "needs": [["printer"]] }] }]""",
            machines: """[{ "id": "printer", "name": "The printer", "kind": "printer" }]""");

        var answer = await Shell.Run("plan", file);

        Assert.Equal(2, answer.Code);
        Assert.StartsWith($"{file}: $.tasks['b']: ", answer.Error, StringComparison.Ordinal);
        Assert.Contains("Sand Yacht", answer.Output, StringComparison.Ordinal);
        Assert.Contains("“cut”", answer.Output, StringComparison.Ordinal);
    }
}
