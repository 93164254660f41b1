using EpisodePlanner.Planning;
using NodaTime;

namespace EpisodePlanner.Web.Tests.Pages;

/// <summary>The change that a person would make to answer otherwise than a page assumes.</summary>
internal static class OtherAnswers
{
    private static readonly Id Fresh = new("another-answer");

    private static IReadOnlyList<(string Assumed, Func<Workshop, Plan, Change> Change)> All { get; } =
    [
        ("channel may be silent", OfSettings(s => s with { ChannelPromiseDays = 14 })),
        ("may be silent", OfSettings(s => s with { SeriesPromiseDays = 14 })),
        ("ready at the last minute", OfSettings(s => s with { SafetyLeadHours = 24 })),
        ("upporters see an episode", OfSettings(s => s with { EarlyViewHours = 24 })),
        ("ork without a range", OfSettings(s => s with { RangeLow = 1, RangeHigh = 1 })),
        ("stretch of less than", OfSettings(s => s with { MinimumBlockMinutes = 60 })),
        ("load or unload of up to", OfSettings(s => s with { TouchMinutes = 0 })),
        ("n episode takes", OfSettings(s => s with { Tail = [new TailPart { Kind = TailKind.Everything, Hours = 8 }] })),
        ("ou publish on Fridays", (_, _) => new SlotRuleChange(Fresh, EveryDay)),
        ("free Monday to Friday", (workshop, _) => SaturdaysToo(workshop)),
        ("order in which its lines", (workshop, _) => InAnyOrder(workshop)),
        ("is in no episode yet", FirstCut),
    ];

    private static SlotRule EveryDay { get; } = new()
    {
        Id = Fresh,
        From = new LocalDate(2026, 1, 1),
        At = new LocalTime(18, 0),
        Rule = "FREQ=DAILY",
    };

    private static OpenHours Longer { get; } = new()
    {
        Weekly =
        [
            Evenings(IsoDayOfWeek.Monday, IsoDayOfWeek.Tuesday, IsoDayOfWeek.Wednesday, IsoDayOfWeek.Thursday, IsoDayOfWeek.Friday),
            Evenings(IsoDayOfWeek.Saturday),
        ],
    };

    public static Change To(Workshop workshop, Plan plan, string line) =>
        All.First(answer => line.Contains(answer.Assumed, StringComparison.Ordinal)).Change(workshop, plan);

    private static Func<Workshop, Plan, Change> OfSettings(Func<Settings, Settings> other) =>
        (workshop, _) => new SettingsChange(other(workshop.Settings));

    private static WeeklyHours Evenings(params IsoDayOfWeek[] days) =>
        new() { Days = [.. days], From = new LocalTime(19, 0), To = new LocalTime(22, 0) };

    private static Batch SaturdaysToo(Workshop workshop) => new(
        workshop.People.Count == 0
            ? [new PersonChange(Fresh, new Person { Id = Fresh, Name = "You", Hours = Longer })]
            : workshop.People.Where(person => person.Hours is null)
                .Select(person => (Change)new PersonChange(person.Id, person with { Hours = Longer })).ToValueList());

    private static Batch InAnyOrder(Workshop workshop) => new(workshop.Tasks
        .Where(task => task.Links.Any(link => link.Assumed))
        .Select(task => (Change)new TaskChange(task.Id, task with { Links = task.Links.Where(link => !link.Assumed).ToValueList() }))
        .ToValueList());

    private static Batch FirstCut(Workshop workshop, Plan plan) => new(plan.Episodes
        .Where(episode => episode.Assumed && episode.Milestones.Count > 1)
        .Select((episode, i) => new Episode
        {
            Id = new Id($"{Fresh}-{i}"),
            Title = "A first cut",
            Series = episode.Series,
            Milestones = [episode.Milestones[0]],
        })
        .Select(episode => (Change)new EpisodeChange(episode.Id, episode))
        .ToValueList());
}
