using EpisodePlanner.Scheduling;
using NodaTime;

namespace EpisodePlanner.Planning;

/// <summary>What was taken for granted about hands and work.</summary>
internal static class WorkTrials
{
    private static readonly WeeklyHours SaturdayEvening = new()
    {
        Days = [IsoDayOfWeek.Saturday],
        From = new LocalTime(19, 0),
        To = new LocalTime(22, 0),
    };

    public static IEnumerable<Trial?> Of(Plan plan)
    {
        var left = StagesLeft(plan);
        yield return Hours(plan);
        yield return Range(plan, left);
        yield return MinimumBlock(plan, left);
        yield return Touch(plan, left);
        yield return Order(plan);
    }

    private static List<Stage> StagesLeft(Plan plan) => [.. plan.Stages
        .Where(stage => stage.Key.IsTask)
        .Select(stage => plan.Request.Workshop.Tasks.Find(stage.Key.Task)!.Stages.First(s => s.Id == stage.Key.Stage))];

    private static Trial? Hours(Plan plan)
    {
        var people = StationTable.PeopleOf(plan.Request.Workshop).Where(p => p.Hours is null).ToList();
        var longer = Defaults.Evenings with { Weekly = [.. Defaults.Evenings.Weekly, SaturdayEvening] };
        return people.Count == 0 || plan.Stages.Count == 0 ? null : Trial.Of(
            "hours",
            "$.people",
            $"{Trials.Row([.. people.Select(p => p.Name)])} {Verb(people)} free Monday to Friday from 19:00 to 22:00",
            "When are you free for the work?",
            "Saturday evening too",
            workshop => workshop with
            {
                People = workshop.People.Concat(people.Select(p => p with { Hours = longer })).ToKeyed(),
            });
    }

    private static string Verb(List<Person> people) =>
        people.Count > 1 || people[0].Name == Defaults.Maker.Name ? "are" : "is";

    private static Trial? Range(Plan plan, List<Stage> left)
    {
        var workshop = plan.Request.Workshop;
        var isUsed = left.Exists(s => s.BusinessDays is null && (s.LowHours is null || s.HighHours is null))
            || TailsLeft(plan).Any(p => p.LowHours is null || p.HighHours is null);
        return !isUsed || workshop.Settings is { RangeLow: not null, RangeHigh: not null } ? null : Trial.OfSettings(
            "range",
            "rangeHigh",
            "work without a range takes 0.8 to 2 times what is typed, so 1.13 times on average",
            "How much longer does work usually take than you think?",
            "exactly what is typed",
            settings => settings with { RangeLow = 1, RangeHigh = 1 });
    }

    private static IEnumerable<TailPart> TailsLeft(Plan plan) => plan.Episodes
        .SelectMany(e => Tails.Of(plan.Request.Workshop, plan.Request.Workshop.Episodes.Find(e.Id)));

    private static Trial? MinimumBlock(Plan plan, List<Stage> left) =>
        plan.Request.Workshop.Settings.MinimumBlockMinutes is not null
        || !left.Exists(s => s is { Kind: StageKind.Attended, MinimumBlockMinutes: null, Unbroken: false }) ? null : Trial.OfSettings(
            "minimumBlock",
            "minimumBlockMinutes",
            $"a stretch of less than {Defaults.MinimumBlockMinutes} min is not worth beginning",
            "How short a stretch of time is still worth beginning work in?",
            "60 min",
            settings => settings with { MinimumBlockMinutes = 60 });

    private static Trial? Touch(Plan plan, List<Stage> left) =>
        plan.Request.Workshop.Settings.TouchMinutes is not null
        || !left.Exists(s => s.Kind == StageKind.Run && Math.Max(s.LoadMinutes, s.UnloadMinutes) > 0) ? null : Trial.OfSettings(
            "touch",
            "touchMinutes",
            $"a load or unload of up to {Defaults.TouchMinutes} min takes nobody's time",
            "Up to how many minutes do you load or unload a machine in passing?",
            "none",
            settings => settings with { TouchMinutes = 0 });

    private static Trial? Order(Plan plan)
    {
        var left = plan.Stages.Where(s => s.Key.IsTask).Select(s => s.Key.Task).ToHashSet();
        var isUsed = plan.Request.Workshop.Tasks
            .Any(task => left.Contains(task.Id) && task.Links.Any(link => link.Assumed && left.Contains(link.Task)));
        return !isUsed ? null : Trial.Of(
            "order",
            "$.tasks[*].links",
            "work is done in the order in which its lines are written",
            "Which of the lines can be done in another order?",
            "any order",
            workshop => workshop with { Tasks = workshop.Tasks.Select(InAnyOrder).ToKeyed() });
    }

    private static WorkTask InAnyOrder(WorkTask task) =>
        task with { Links = task.Links.Where(link => !link.Assumed).ToValueList() };
}
