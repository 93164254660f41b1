using System.Text.Json;
using System.Text.Json.Serialization;

namespace EpisodePlanner.Planning.Tests.Plans;

/// <summary>
/// Workshops of a few minutes of work in short evenings, small enough to try every schedule of. The same seed gives the
/// same workshop. Planned on Monday 8 March 2027 at noon; an evening begins at 18:00, a slot is at 12:00.
/// </summary>
internal sealed class TinyWorkshops
{
    public const string Now = "2027-03-08T12:00";

    private static readonly string[] EveryDay =
        ["monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday"];

    private static readonly string[] FirstMilestone = ["m0"];

    private static readonly string[] SlotRules = ["FREQ=DAILY", "FREQ=WEEKLY;BYDAY=TU,FR", "FREQ=WEEKLY;BYDAY=WE,SA"];

    private static readonly JsonSerializerOptions NoNulls = new() { DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull };

    private readonly Dice dice;
    private readonly int evening;
    private readonly int series;
    private readonly int tasks;

    private TinyWorkshops(int seed)
    {
        dice = new Dice(seed);
        (evening, series, tasks) = (dice.Between(2, 4), dice.Between(1, 2), dice.Between(2, 3));
    }

    public static string File(int seed) => new TinyWorkshops(seed).Write();

    private string Write() => JsonSerializer.Serialize(Workshop(), NoNulls);

    private object Workshop() => new
    {
        format = 1,
        name = "Tiny",
        zone = "Etc/UTC",
        settings = new
        {
            rangeLow = 1,
            rangeHigh = 1,
            tail = new[] { new { kind = "everything", hours = Hours(dice.Between(0, 2)) } },
            minimumBlockMinutes = dice.Between(1, 2),
            safetyLeadHours = dice.Between(0, 2) == 0 ? 30 : 0,
            channelPromiseDays = dice.Between(2, 9),
        },
        people = Enumerable.Range(0, dice.Between(1, 2)).Select(Person),
        places = new[] { new { id = "bench", name = "The bench", kind = "bench" } },
        series = Enumerable.Range(0, series).Select(Series),
        tasks = Enumerable.Range(0, tasks).Select(Task).ToArray(),
        episodes = new[] { new { id = "e0", title = "First", series = "s0", milestones = FirstMilestone } },
        slotRules = new[] { new { from = "2027-01-01", at = "12:00", rule = SlotRules[dice.Between(0, 2)] } },
        uploads = Enumerable.Range(0, series).Select(s => new { series = $"s{s}", date = $"2027-03-0{dice.Between(3, 8)}" }),
        toldDates = dice.Between(0, 2) == 0
            ? new[] { new { episode = "e0", date = $"2027-03-{dice.Between(10, 14)}", toldOn = "2027-03-01", to = "all" } }
            : [],
    };

    private object Person(int number) => new
    {
        id = $"p{number}",
        name = $"Person {number}",
        hours = new
        {
            weekly = new[] { new { days = number == 0 ? EveryDay : EveryDay[..dice.Between(1, 6)], from = "18:00", to = $"18:0{evening}" } },
        },
    };

    private object Series(int number) => new
    {
        id = $"s{number}",
        name = $"Series {number}",
        promise = new { longestSilenceDays = dice.Between(1, 7) },
        milestones = Enumerable.Range(0, tasks).Where(t => t % series == number).Select(t => new { id = $"m{t}", name = $"m{t}" }),
    };

    private object Task(int number)
    {
        var minutes = dice.Between(1, 4);
        return new
        {
            id = $"t{number}",
            name = $"t{number}",
            milestone = $"m{number}",
            stages = new[]
            {
                new
                {
                    kind = "attended",
                    hours = Hours(minutes),
                    unbroken = minutes <= evening && dice.Between(0, 1) == 0,
                    needs = dice.Between(0, 1) == 0 ? new[] { new[] { "bench" } } : [],
                },
            },
            links = number >= series && dice.Between(0, 1) == 0 ? new[] { new { task = $"t{number - series}" } } : [],
            neededBy = dice.Between(0, 3) == 0 ? $"2027-03-{dice.Between(10, 12)}" : null,
        };
    }

    private static decimal Hours(int minutes) => decimal.Round(minutes / 60m, 7);
}
