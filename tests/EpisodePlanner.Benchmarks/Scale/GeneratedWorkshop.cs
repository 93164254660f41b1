using EpisodePlanner.Checking;
using EpisodePlanner.Planning;
using NodaTime;

namespace EpisodePlanner.Benchmarks.Scale;

/// <summary>Makes workshops of any size by the shares of <see cref="WorkshopMix"/>; the same seed makes the same one.</summary>
internal static class GeneratedWorkshop
{
    private static readonly LocalDate Monday = new(2027, 3, 1);

    /// <summary>When they are planned.</summary>
    public static Instant PlannedAt { get; } = Instant.FromUtc(2027, 3, 1, 8, 0);

    public static Workshop Make(int tasks, int seed)
    {
        var milestones = (int)Math.Ceiling(tasks / (double)(WorkshopMix.Series * WorkshopMix.TasksPerMilestone));
        return new Workshop
        {
            Format = Workshop.CurrentFormat,
            Name = $"Workshop of {tasks} tasks",
            Zone = "Europe/Dublin",
            Settings = new Settings
            {
                SeriesPromiseDays = 28,
                Desk = GeneratedStations.Desk,
                Tail = [new TailPart { Kind = TailKind.EditPass, Hours = WorkshopMix.TailHours }],
            },
            People = GeneratedStations.People,
            Machines = GeneratedStations.Machines,
            Places = GeneratedStations.Places,
            Series = Enumerable.Range(0, WorkshopMix.Series).Select(series => Series(series, milestones)).ToKeyed(),
            Tasks = new GeneratedTasks(new Dice((ulong)seed)).Make(tasks),
            Episodes = Enumerable.Range(0, WorkshopMix.Series).SelectMany(series => Episodes(series, milestones)).ToKeyed(),
            SlotRules = [new SlotRule { Id = new Id("evenings"), From = Monday, At = new LocalTime(18, 0), Rule = "FREQ=DAILY" }],
            Uploads = Enumerable.Range(0, WorkshopMix.Series).Select(Upload).ToKeyed(),
        };
    }

    private static Series Series(int series, int milestones) => new()
    {
        Id = new Id($"s{series}"),
        Name = $"Series {series}",
        Milestones = Enumerable.Range(0, milestones).Select(m => Milestone(series, m)).ToValueList(),
    };

    private static Milestone Milestone(int series, int number) => new()
    {
        Id = MilestoneId(series, number),
        Name = $"State {number} of series {series}",
    };

    private static Id MilestoneId(int series, int number) =>
        GeneratedTasks.MilestoneOf(series + (number * WorkshopMix.TasksPerMilestone * WorkshopMix.Series));

    private static IEnumerable<Episode> Episodes(int series, int milestones) =>
        Enumerable.Range(0, milestones).Chunk(WorkshopMix.MilestonesPerEpisode).Select((shown, number) => new Episode
        {
            Id = new Id($"s{series}-e{number:0000}"),
            Title = $"Episode {number} of series {series}",
            Series = new Id($"s{series}"),
            Milestones = shown.Select(m => MilestoneId(series, m)).ToValueList(),
        });

    private static Upload Upload(int series) => new()
    {
        Id = new Id($"u{series}"),
        Series = new Id($"s{series}"),
        Date = Monday.PlusDays(-3 - (2 * series)),
    };
}
