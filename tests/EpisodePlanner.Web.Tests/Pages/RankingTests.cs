using System.Text;
using EpisodePlanner.Planning;
using EpisodePlanner.Planning.Files;
using EpisodePlanner.Web.Tests.CommandLine;
using NodaTime;

namespace EpisodePlanner.Web.Tests.Pages;

/// <summary>
/// What the pages say about assumed values. Oracle: each other answer is given to the workshop as a real change, as a
/// person would, and planned cold.
/// </summary>
public sealed class RankingTests
{
    private static readonly Instant Now = Instant.FromDateTimeOffset(Shell.Anchor);

    public static TheoryData<string> Names => [.. Files.Keys];

    private static IReadOnlyDictionary<string, Func<byte[]>> Files { get; } = new Dictionary<string, Func<byte[]>>
    {
        ["the demo"] = () => File.ReadAllBytes(Papers.Demo),
        ["the least input"] = () => File.ReadAllBytes(Papers.FirstLines),
        ["less than the least"] = () => """
            { "format": 1, "name": "Shed", "zone": "Europe/Dublin",
              "series": [{ "id": "cart", "name": "Kite Cart", "work": ["cut tube, 3 h", "weld frame, 12 h", "wire, 8 h"] }] }
            """u8.ToArray(),
        ["two series and a printer"] = () => Encoding.UTF8.GetBytes("""
            { "format": 1, "name": "Shed", "zone": "Europe/Dublin",
              "machines": [{ "id": "tern", "name": "Tern", "kind": "printer" }],
              "series": [{ "id": "bell", "name": "Bell", "milestones": [{ "id": "rings", "name": "it rings" }] },
                         { "id": "cart", "name": "Kite Cart", "work": ["cut tube, 3 h", "wire, 2 h"] }],
              "tasks": [{ "id": "print", "name": "print the bell", "kind": "print", "milestone": "rings",
                          "stages": [{ "id": "run", "kind": "run", "hours": 2, "needs": [["tern"]], "loadMinutes": 10, "unloadMinutes": 10 }] }],
              "slotRules": [{ "from": "2026-01-02", "at": "18:00", "rule": "FREQ=DAILY" }] }
            """),
    };

    [Theory]
    [MemberData(nameof(Names))]
    public async Task Pages_RankAndMeasureAsRealChangesDo(string name)
    {
        await using var visit = await DeskVisit.To(Files[name]());
        var workshop = await visit.Stored();
        var settings = await visit.Read("/settings");
        var lines = settings.QuerySelectorAll("section.sheet:last-of-type li").Select(line => line.TextContent).ToList();
        var moves = lines.Select(line => Moves(workshop, line)).ToList();

        Assert.NotEmpty(lines);
        Assert.All(lines.Zip(moves), pair => Assert.EndsWith(Said(pair.Second), pair.First, StringComparison.Ordinal));
        var sizes = moves.Select(minutes => minutes is { } known ? Math.Abs(known) : -1).ToList();
        Assert.Equal(sizes.OrderDescending(), sizes);

        var question = (await visit.Read()).QuerySelectorAll("section.answer").Single(s => s.QuerySelector("h2")!.TextContent == "One question");
        var assumed = lines[0][..lines[0].LastIndexOf(": ", StringComparison.Ordinal)];
        Assert.Contains(assumed, question.TextContent, StringComparison.Ordinal);
        Assert.Contains(Said(moves[0]).TrimStart(), question.TextContent, StringComparison.Ordinal);
    }

    /// <summary>How far the next upload really moves, in minutes; null where no answer can be tried.</summary>
    private static double? Moves(Workshop workshop, string line)
    {
        if (line.Contains("eeing any of the lines done", StringComparison.Ordinal))
        {
            return null;
        }

        var changed = Assert.IsType<Applied>(Changes.Apply(workshop, OtherAnswers.To(workshop, Planned(workshop), line))).Workshop;
        var (before, after) = (Planned(workshop), Planned(changed));
        return ((after.NextUpload?.Publish ?? before.Horizon) - (before.NextUpload?.Publish ?? before.Horizon)).TotalMinutes;
    }

    private static Plan Planned(Workshop workshop) =>
        Planner.Make(new PlanRequest(WorkshopFile.Read(WorkshopFile.Write(workshop)).Thing!, Now) { Schedules = 12, Seed = 1 });

    private static string Said(double? minutes) => minutes switch
    {
        null => "moves no date yet.",
        0 => ", no difference.",
        { } some => $", the next upload comes {Length(Math.Abs(some))} {(some < 0 ? "earlier" : "later")}.",
    };

    private static string Length(double minutes) => minutes < 1_440
        ? Words.Minutes((int)minutes)
        : Math.Round(minutes / 1_440) is var days && days == 1 ? "1 day" : $"{Math.Round(minutes / 1_440)} days";
}
