using EpisodePlanner.Planning;
using EpisodePlanner.Scheduling;
using EpisodePlanner.Web.Pictures;

namespace EpisodePlanner.Web.Tests.Pictures;

public sealed class BenchRowsTests
{
    private static readonly Plan Plan = SamplePlans.Demo;

    /// <summary>All that the plan of the demo reaches, in the rows of a year; no clock change lies under a working hand.</summary>
    private static readonly ValueList<BenchRow> Rows = BenchRows.Of(Plan, BenchView.FromNow(Plan, 366, BenchView.Desk));

    [Fact]
    public void Of_KeepsEveryMinuteOfHands()
    {
        var workshop = Plan.Request.Workshop;
        var planned = Plan.Stages.SelectMany(stage => stage.Parts)
            .Where(part => part.Kind is PartKind.Work or PartKind.Load or PartKind.Unload)
            .Sum(part => (part.End - part.Start).TotalMinutes * part.Stations.Count(workshop.People.Contains));

        Assert.Equal(planned, Rows.SelectMany(row => row.Hands).SelectMany(lane => lane.Bars).Sum(bar => bar.To - bar.From));
    }

    [Fact]
    public void Of_KeepsEveryRun()
    {
        var planned = Plan.Stages.Where(stage => stage.Parts.Any(part => part.Kind == PartKind.Run)).Select(stage => stage.Key);
        var drawn = Rows.SelectMany(row => row.Machines).SelectMany(lane => lane.Bars).Where(bar => bar.Kind == BarKind.Run);

        Assert.Equal(planned.ToHashSet(), drawn.Select(bar => bar.Stage.Key).ToHashSet());
    }

    [Fact]
    public void Of_HandsWorkOnlyInOpenHours() => Assert.All(Rows, row => Assert.All(
        row.Hands.SelectMany(lane => lane.Bars),
        bar => Assert.Contains(row.Open, open => open.From <= bar.From && bar.To <= open.To)));

    [Fact]
    public void Of_BarsOfOneHandDoNotOverlap() => Assert.All(Rows.SelectMany(row => row.Hands), lane =>
    {
        for (var i = 1; i < lane.Bars.Count; i++)
        {
            Assert.True(lane.Bars[i - 1].To <= lane.Bars[i].From);
        }
    });

    [Theory]
    [InlineData("2027-03-12T12:00:00", "2027-03-12")]
    [InlineData("2027-03-12T11:59:00", "2027-03-11")]
    [InlineData("2027-03-13T00:30:00", "2027-03-12")]
    public void RowOf_TurnsAtNoon(string moment, string day) => Assert.Equal(
        NodaTime.Text.LocalDatePattern.Iso.Parse(day).Value,
        BenchView.RowOf(NodaTime.Text.LocalDateTimePattern.ExtendedIso.Parse(moment).Value));

    [Fact]
    public void Chain_RunsUnbrokenToThePublicMoment()
    {
        var view = BenchView.FromNow(Plan, 366, BenchView.Desk);
        var next = Plan.NextUpload!;
        var chain = BenchChain.Of(Plan, next, view).Select(s => (From: (s.Row * 1440) + s.From, To: (s.Row * 1440) + s.To)).ToList();
        for (var i = 1; i < chain.Count; i++)
        {
            Assert.Equal(chain[i - 1].To, chain[i].From);
        }

        var publish = next.Publish!.Value.InZone(Plan.Zone).LocalDateTime;
        Assert.Equal(BenchRows.MinutesAfterNoon(publish, view.FirstDay), chain[^1].To);
    }
}
