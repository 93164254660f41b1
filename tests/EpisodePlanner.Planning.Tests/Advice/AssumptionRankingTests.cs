using EpisodePlanner.Planning.Tests.Demo;
using NodaTime;

namespace EpisodePlanner.Planning.Tests.Advice;

public sealed class AssumptionRankingTests
{
    private static readonly PlanRequest FirstLines =
        new(DemoSeed.Read("first-lines.json"), Instant.FromUtc(2026, 11, 25, 8, 0));

    private static readonly ValueList<Assumption> Ranked = AssumptionRanking.Rank(FirstLines);

    [Fact]
    public void Rank_LeastInput_NamesEveryDefaultItUses() => Assert.Equal(
        ["channelPromise", "cut", "earlyView", "minimumBlock", "order", "payoff", "range", "safetyLead", "seriesPromise", "tail"],
        Ranked.Select(a => a.Name).Order(StringComparer.Ordinal));

    [Fact]
    public void Rank_IsByHowFarTheNextUploadMoves()
    {
        var moves = Ranked.Select(a => a.MovesMinutes is { } m ? Math.Abs(m) : -1).ToList();

        Assert.Equal(moves.OrderDescending(), moves);
        Assert.Same(Ranked[0], AssumptionRanking.Question(Ranked));
    }

    [Fact]
    public void Rank_EachMeasure_IsWhatAPlanWithTheOtherAnswerGives()
    {
        var shorter = FirstLines.Workshop with
        {
            Settings = new Settings { Tail = [new TailPart { Kind = TailKind.Everything, Hours = 8 }] },
        };
        var moved = Marl.Make(FirstLines with { Workshop = shorter }).NextUpload!.Publish - Marl.Make(FirstLines).NextUpload!.Publish;

        Assert.Equal((int)moved!.Value.TotalMinutes, Ranked.Single(a => a.Name == "tail").MovesMinutes);
    }

    [Fact]
    public void Rank_NobodyNamed_AsksForHoursAndSlots()
    {
        var bare = FirstLines.Workshop with { People = [], SlotRules = [] };
        var names = AssumptionRanking.Rank(FirstLines with { Workshop = bare }).Select(a => a.Name).ToList();

        Assert.Contains("hours", names);
        Assert.Contains("slots", names);
    }

    [Fact]
    public void Rank_Given_IsNotAssumed()
    {
        var given = FirstLines.Workshop with
        {
            Settings = new Settings
            {
                SeriesPromiseDays = 21,
                ChannelPromiseDays = 21,
                RangeLow = 0.8m,
                RangeHigh = 2,
                Tail = [new TailPart { Kind = TailKind.Everything, Hours = 16 }],
                SafetyLeadHours = 0,
                EarlyViewHours = 0,
                MinimumBlockMinutes = 30,
                TouchMinutes = 10,
            },
        };

        Assert.Equal(
            ["cut", "order", "payoff"],
            AssumptionRanking.Rank(FirstLines with { Workshop = given }).Select(a => a.Name).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Rank_Stopped_LeavesTheRestUntried() => Assert.All(
        AssumptionRanking.Rank(Marl.Make(FirstLines), stop: new CancellationToken(canceled: true)),
        assumption => Assert.Null(assumption.MovesMinutes));
}
