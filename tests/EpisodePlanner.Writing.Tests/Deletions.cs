using EpisodePlanner.Planning;

namespace EpisodePlanner.Writing.Tests;

/// <summary>Every fact of a plan that can be taken away on its own, and how.</summary>
internal static class Deletions
{
    public static Dictionary<Fact, Func<Plan, Plan>> All(Plan plan)
    {
        var workshop = plan.Request.Workshop;
        var all = new Dictionary<Fact, Func<Plan, Plan>>();
        Add(workshop.Log, Fact.Of, entry => plan => plan.With(w => w with { Log = w.Log.Without(entry.Id) }));
        Add(workshop.ToldDates, Fact.Of, told => plan => plan.With(w => w with { ToldDates = w.ToldDates.Without(told.Id) }));
        Add(workshop.TimedLines, Fact.Of, line => plan => plan.With(w => w with { TimedLines = w.TimedLines.Without(line.Id) }));
        Add(workshop.Tasks.SelectMany(task => task.Shots.Select(shot => (task, shot))), pair => Fact.Of(pair.task, pair.shot), pair => WithoutShot(pair.task, pair.shot));
        Add(plan.Stages, Fact.Of, stage => plan => plan with { Stages = plan.Stages.Where(other => other != stage).ToValueList() });
        Add(plan.Series.SelectMany(outlook => outlook.Alarms.Select(alarm => (outlook, alarm))), pair => Fact.Of(pair.outlook, pair.alarm), pair => WithoutAlarm(pair.alarm));
        return all;

        void Add<T>(IEnumerable<T> things, Func<T, Fact> fact, Func<T, Func<Plan, Plan>> delete)
        {
            foreach (var thing in things)
            {
                all.Add(fact(thing), delete(thing));
            }
        }
    }

    private static Func<Plan, Plan> WithoutShot(WorkTask task, Shot shot) => plan => plan.With(workshop =>
        workshop with { Tasks = workshop.Tasks.With(task with { Shots = task.Shots.Where(other => other != shot).ToValueList() }) });

    private static Func<Plan, Plan> WithoutAlarm(SilenceAhead alarm) => plan => plan with
    {
        Series = plan.Series
            .Select(outlook => outlook with { Alarms = outlook.Alarms.Where(other => other != alarm).ToValueList() })
            .ToValueList(),
    };
}
