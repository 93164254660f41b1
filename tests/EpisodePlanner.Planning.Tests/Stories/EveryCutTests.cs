using System.Globalization;
using EpisodePlanner.Planning.Tests.Plans;

namespace EpisodePlanner.Planning.Tests.Stories;

/// <summary>
/// Proposed cuts against every way to cut. Source: brute force over up to three series and eight milestones, each way planned;
/// which ways are open, and what a plan's silences weigh, is written here anew from what design.md says.
/// </summary>
public sealed class EveryCutTests
{
    public static TheoryData<int> Seeds => [.. Enumerable.Range(1, 24)];

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Of_RandomWorkshop_ProposesTheBestOfAllCuts(int seed)
    {
        var workshop = Random(new Dice(seed));
        var plan = Trial.Plan(workshop, Shop.Monday);

        var answer = plan.Answer();

        Assert.True(answer.IsWhole);
        var least = Ways(workshop).Select(way => Weigh(Trial.Feasible(plan.Request with { Workshop = way }), plan)).Append(Weigh(plan, plan)).Min();
        Assert.Equal(least, Weigh(answer.Cuts?.Then ?? plan, plan));
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Of_RandomWorkshop_EveryProposalIsTheColdPlanOfItsChange(int seed)
    {
        var plan = Trial.Plan(Random(new Dice(seed)), Shop.Monday);
        var answer = plan.Answer();
        StoryProposal?[] together = [answer.Cuts, answer.Held];
        var singles = plan.Series.SelectMany(outlook => plan.Places($"{outlook.Series}").SelectMany(place => new[] { place.Proposal, place.Moved })
            .Concat(plan.Others($"{outlook.Series}")));

        foreach (var proposal in together.Concat(singles).OfType<StoryProposal>())
        {
            var cold = plan.Cold(proposal.Change);
            Assert.Equal(
                cold.Episodes.Select(episode => (episode.Id, episode.Date)), proposal.Then.Episodes.Select(episode => (episode.Id, episode.Date)));
            var tails = cold.Episodes.Count - plan.Episodes.Count;
            Assert.Equal(tails * 6m, proposal.Difference.HoursMore);
            var applied = Assert.IsType<Applied>(Changes.Apply(plan.Request.Workshop, proposal.Change));
            Assert.Equal(plan.Request.Workshop, Assert.IsType<Applied>(Changes.Apply(applied.Workshop, applied.Inverse)).Workshop);
        }
    }

    [Fact]
    public void Of_StoppedAtOnce_StillAnswers()
    {
        using var stopped = new CancellationTokenSource();
        stopped.Cancel();

        var answer = StoryAnswer.Of(GorseTests.Uncut(), stop: stopped.Token);

        Assert.Null(answer.Cuts);
        Assert.False(answer.IsWhole);
    }

    [Fact]
    public void Of_FewerPlansThanWays_NeverWeighsMoreThanNow()
    {
        for (var seed = 1; seed <= 12; seed++)
        {
            var plan = Trial.Plan(Random(new Dice(seed)), Shop.Monday);
            var answer = plan.Answer(2);
            Assert.True(answer.Then <= answer.Now, $"seed {seed}");
            Assert.True(answer.Made <= 4, $"seed {seed}");
        }
    }

    /// <summary>Unpublished, late, silence as it is planned, the end of the work, days until all are out.</summary>
    private static (int Unpublished, long Late, long Silence, long End, long Days) Weigh(Plan plan, Plan first)
    {
        var through = SilencePenalty.DayNumber(first.Horizon.InZone(first.Zone).Date);
        var silence = 0L;
        var from = SilencePenalty.DayNumber(plan.Channel.LastUpload!.Value);
        foreach (var outlook in plan.Series.Append(plan.Channel))
        {
            var days = plan.Episodes.Where(e => e.Date is not null && (outlook.Series == default || e.Series == outlook.Series))
                .Select(e => SilencePenalty.DayNumber(e.Date!.Value)).Order().ToList();
            silence += Gaps(outlook, days, through);
        }

        return (
            plan.Episodes.Count(e => e.Date is null),
            plan.Weights.LateMinutes,
            silence,
            plan.Weights.EndMinute,
            plan.Episodes.Sum(e => e.Date is { } day ? (long)SilencePenalty.DayNumber(day) - from : 0));
    }

    private static long Gaps(Outlook outlook, List<int> days, int through)
    {
        var (total, from, longest) = (0L, SilencePenalty.DayNumber(outlook.LastUpload!.Value), outlook.Promise.LongestSilenceDays!.Value);
        foreach (var day in days)
        {
            var over = Math.Max(0, day - from - longest);
            total += over <= 30 ? over * over : 900 + (60 * (over - 30));
            from = day;
        }

        var open = Math.Clamp(through - from - longest, 0, 30);
        return total + (open * open);
    }

    /// <summary>Every way to cut what is open: an episode ends with a payoff that is not held together with the next.</summary>
    private static IEnumerable<Workshop> Ways(Workshop workshop) => workshop.Series.Aggregate(
        (IEnumerable<Workshop>)[workshop with { Episodes = [] }],
        (ways, series) => ways.SelectMany(way => Ways(way, series)));

    private static IEnumerable<Workshop> Ways(Workshop workshop, Series series)
    {
        var ends = Enumerable.Range(0, series.Milestones.Count - 1)
            .Where(m => series.Milestones[m] is { Payoff: true, TogetherWithNext: false }).ToList();
        for (var mask = 0; mask < 1 << ends.Count; mask++)
        {
            var (episodes, first) = (workshop.Episodes, 0);
            foreach (var end in ends.Where((_, bit) => (mask & (1 << bit)) != 0))
            {
                episodes = episodes.With(new Episode
                {
                    Id = new Id($"{series.Id}-{end}"),
                    Title = "cut",
                    Series = series.Id,
                    Milestones = series.Milestones.Skip(first).Take(end - first + 1).Select(m => m.Id).ToValueList(),
                });
                first = end + 1;
            }

            yield return workshop with { Episodes = episodes };
        }
    }

    private static Workshop Random(Dice dice)
    {
        var count = dice.Between(1, 3);
        var series = Enumerable.Range(0, count).Select(s => (Name: $"s{s}", Milestones: dice.Between(1, 8 / count))).ToList();
        return Trial.Read(new Shop
        {
            Settings = Trial.Typed(6),
            Series = string.Join(", ", series.Select(s => Story(dice, s.Name, s.Milestones))),
            Tasks = string.Join(", ", series.SelectMany(s => Enumerable.Range(0, s.Milestones).Select(m => Work(dice, s.Name, m)))),
            Slots = """{ "id": "slots", "from": "2027-01-01", "at": "18:00", "rule": "FREQ=WEEKLY;BYDAY=TU,FR" }""",
            Uploads = string.Join(", ", series.Select(s => $$"""{ "series": "{{s.Name}}", "date": "2027-03-0{{dice.Between(1, 7)}}" }""")),
        }.File);
    }

    private static string Story(Dice dice, string name, int milestones) => string.Create(CultureInfo.InvariantCulture, $$"""
        { "id": "{{name}}", "name": "{{name}}", "promise": { "longestSilenceDays": {{dice.Between(7, 21)}} }, "milestones": [{{string.Join(", ",
            Enumerable.Range(0, milestones).Select(m => Milestone(dice, name, m)))}}] }
        """);

    private static string Milestone(Dice dice, string name, int number) =>
        $$"""{ "id": "{{name}}-m{{number}}", "name": "m{{number}}", "payoff": {{(dice.Between(1, 4) > 1 ? "true" : "false")}}{{(dice.Between(1, 6) == 1 ? ", \"togetherWithNext\": true" : "")}} }""";

    private static string Work(Dice dice, string name, int number)
    {
        var after = number == 0 ? "" : $$""", "links": [{ "task": "{{name}}-t{{number - 1}}" }]""";
        return $$"""{ "id": "{{name}}-t{{number}}", "name": "{{name}} {{number}}", "milestone": "{{name}}-m{{number}}", "stages": [{ "kind": "attended", "hours": {{dice.Between(2, 24)}} }]{{after}} }""";
    }
}
