using static EpisodePlanner.Planning.Tests.Sample;

namespace EpisodePlanner.Planning.Tests;

public class LogRulesTests
{
    private const string StillOpen = "and is still open; log its end before it begins again.";

    [Fact]
    public void Check_EntryOfTaskAndEpisode() => Breaks.One(
        WithLog(Entry("x", 8) with { Episode = Id("ep-2") }),
        "$.log['x']",
        "Work is done on one of two: name either a task or an episode.");

    [Fact]
    public void Check_BegunOfNothing() => Breaks.At(
        WithLog(Entry("x", 8) with { Task = null, Outcome = LogOutcome.Begun }), "$.log['x']");

    [Fact]
    public void Check_StageWithoutTaskAndPartWithoutEpisode() => Breaks.At(
        WithLog(
            Entry("x", 8) with { Task = null, Episode = Id("ep-2"), Stage = Id("1") },
            Entry("y", 8) with { Part = TailKind.Checks }),
        "$.log['x'].stage",
        "$.log['y'].part");

    [Fact]
    public void Check_UnknownTaskStageEpisodeStation() => Breaks.At(
        WithLog(
            Entry("a", 8) with { Task = Id("sweeep") },
            Entry("b", 8) with { Stage = Id("9") },
            Entry("c", 8) with { Task = null, Episode = Id("ep-9") },
            Entry("d", 8) with { Station = Id("bob") }),
        "$.log['a'].task",
        "$.log['b'].stage",
        "$.log['c'].episode",
        "$.log['d'].station");

    [Fact]
    public void Check_BegunTwice() => Breaks.One(
        WithLog(Begun("a", 8), Begun("b", 9)),
        "$.log['b']",
        $"This work was already begun by log entry 'a' {StillOpen}");

    [Fact]
    public void Check_BegunTwice_WholeTaskAndStage() => Breaks.At(
        WithLog(Begun("a", 8) with { Stage = Id("1") }, Begun("b", 9)), "$.log['b']");

    [Fact]
    public void Check_BegunTwice_TimeDecidesNotId() => Breaks.One(
        WithLog(Begun("b", 8), Begun("a", 9)),
        "$.log['a']",
        $"This work was already begun by log entry 'b' {StillOpen}");

    [Fact]
    public void Check_BegunAgainAfterItsEnd() => Assert.Empty(WorkshopRules.Check(
        WithLog(Begun("a", 8), Entry("b", 9), Begun("c", 9), Entry("d", 10) with { Outcome = LogOutcome.Failed }, Begun("e", 11))));

    [Fact]
    public void Check_BegunAndEndedAtOneMoment() => Assert.Empty(WorkshopRules.Check(
        WithLog(Begun("a", 8), Entry("b", 8), Begun("c", 9))));

    [Fact]
    public void Check_TwoPartsOfOneTailAtOnce() => Assert.Empty(WorkshopRules.Check(
        WithLog(Begun("a", 8) with { Task = null, Episode = Id("ep-2"), Part = TailKind.Captions })));

    private static LogEntry Entry(string id, int day) =>
        new() { Id = Id(id), At = Moment(day, 20), Task = Id("sweep"), Outcome = LogOutcome.Partly };

    private static LogEntry Begun(string id, int day) => Entry(id, day) with { Outcome = LogOutcome.Begun };
}
