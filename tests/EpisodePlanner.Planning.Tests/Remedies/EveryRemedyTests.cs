using EpisodePlanner.Planning.Tests.Plans;
using NodaTime;

namespace EpisodePlanner.Planning.Tests.Remedies;

/// <summary>
/// What is offered against every single way out there is in tiny workshops. Source: brute force, each change written here by hand
/// and planned from nothing.
/// </summary>
public sealed class EveryRemedyTests
{
    private const int Workshops = 500;

    [Fact]
    public void Of_RandomWorkshops_NoSingleWayOutIsBetterThanTheBestOffered()
    {
        var (alarms, won) = (0, 0);
        for (var seed = 1; seed <= Workshops; seed++)
        {
            var plan = Trial.Plan(Random(new Dice(seed)), Shop.Monday);
            foreach (var outlook in plan.Series.Where(outlook => outlook.Alarms.Count > 0))
            {
                var about = SilenceRemedies.Of(plan, outlook.Series, stop: TestContext.Current.CancellationToken)!;
                var offered = about.Helping.Select(remedy => remedy.OverThen).Append(outlook.WorstOver).Min();
                var best = Ways(plan, outlook).Select(change => Over(plan, change, outlook.Series)).OfType<int>().Append(outlook.WorstOver).Min();

                Assert.True(offered <= best, $"seed {seed}, {outlook.Series}: {offered} days offered, {best} possible");
                (alarms, won) = (alarms + 1, won + (best < outlook.WorstOver ? 1 : 0));
            }
        }

        // Enough to be worth something: many alarms, and most of them have a way out.
        Assert.True(alarms > Workshops / 4 && won > alarms / 2, $"{alarms} alarms, {won} with a way out");
    }

    private static int? Over(Plan plan, Change change, Id series)
    {
        if (Changes.Apply(plan.Request.Workshop, change) is not Applied applied)
        {
            return null;
        }

        var then = Planner.Make(plan.Request with { Workshop = applied.Workshop }, stop: TestContext.Current.CancellationToken);
        return then.Series.Single(one => one.Series == series).Alarms.Select(alarm => alarm.DaysOver).DefaultIfEmpty(0).Max();
    }

    private static IEnumerable<Change> Ways(Plan plan, Outlook outlook)
    {
        var workshop = plan.Request.Workshop;
        var series = workshop.Series.Find(outlook.Series)!;
        var ann = workshop.People.Single();
        foreach (var (milestone, place) in series.Milestones.Select((milestone, place) => (milestone, place)).SkipLast(1).Where(x => x.milestone.Payoff))
        {
            yield return Cut(series, series.Milestones.Take(place + 1), $"cut-{milestone.Id}");
        }

        yield return Cut(series, [], "footage");
        yield return new PersonChange(new Id("bo"), ann with { Id = new Id("bo"), Name = "Bo" });
        foreach (var day in new[] { IsoDayOfWeek.Saturday, IsoDayOfWeek.Sunday })
        {
            var weekly = ann.Hours!.Weekly.Append(ann.Hours.Weekly[0] with { Days = [day] }).ToValueList();
            yield return new PersonChange(ann.Id, ann with { Hours = ann.Hours with { Weekly = weekly } });
        }

        if (outlook.Alarms[0].Ends is { } ends)
        {
            foreach (var other in workshop.Series.Where(other => other.Id != series.Id))
            {
                var its = other.Milestones.Select(milestone => milestone.Id).ToHashSet();
                yield return new Batch(workshop.Tasks.Where(task => its.Contains(task.Milestone!.Value))
                    .Select(task => (Change)new TaskChange(task.Id, task with { NotBefore = ends })).ToValueList());
            }
        }
    }

    private static EpisodeChange Cut(Series series, IEnumerable<Milestone> milestones, string id) => new(new Id(id), new Episode
    {
        Id = new Id(id),
        Title = "a cut",
        Series = series.Id,
        Milestones = milestones.Select(milestone => milestone.Id).ToValueList(),
    });

    private static Workshop Random(Dice dice)
    {
        var series = Enumerable.Range(0, dice.Between(1, 2)).Select(s => (Name: $"s{s}", Milestones: dice.Between(1, 3))).ToList();
        return Trial.Read(new Shop
        {
            Settings = Trial.Typed(4),
            People = $$"""{ "id": "ann", "name": "Ann", "hours": { "weekly": [{ "days": {{Trial.Weekdays}}, "from": "18:00", "to": "22:00" }] } }""",
            Series = string.Join(", ", series.Select(s => Story(dice, s.Name, s.Milestones))),
            Tasks = string.Join(", ", series.SelectMany(s => Enumerable.Range(0, s.Milestones).Select(m => Work(dice, s.Name, m)))),
            Slots = """{ "id": "slots", "from": "2027-01-01", "at": "18:00", "rule": "FREQ=WEEKLY;BYDAY=TU,FR" }""",
            Uploads = string.Join(", ", series.Select(s => $$"""{ "series": "{{s.Name}}", "date": "2027-03-0{{dice.Between(1, 7)}}" }""")),
        }.File);
    }

    private static string Story(Dice dice, string name, int milestones) => $$"""
        { "id": "{{name}}", "name": "{{name}}", "promise": { "longestSilenceDays": {{dice.Between(7, 16)}} }, "milestones": [{{string.Join(", ",
            Enumerable.Range(0, milestones).Select(m => $$"""{ "id": "{{name}}-m{{m}}", "name": "m{{m}}", "payoff": {{(dice.Between(1, 4) > 1 ? "true" : "false")}} }"""))}}] }
        """;

    private static string Work(Dice dice, string name, int number)
    {
        var after = number == 0 ? "" : $$""", "links": [{ "task": "{{name}}-t{{number - 1}}" }]""";
        return $$"""{ "id": "{{name}}-t{{number}}", "name": "{{name}} {{number}}", "milestone": "{{name}}-m{{number}}", "stages": [{ "kind": "attended", "hours": {{dice.Between(2, 20)}} }]{{after}} }""";
    }
}
