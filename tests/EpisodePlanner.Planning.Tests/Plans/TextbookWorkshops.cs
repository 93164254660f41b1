using System.Text.Json;
using EpisodePlanner.Checking.Textbook;
using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Planning.Tests.Plans;

/// <summary>
/// Textbook networks as workshop files: an activity is a task of hours, everybody works day and night, one unit is an
/// hour. Zones without clock changes.
/// </summary>
internal static class TextbookWorkshops
{
    public const string Now = "2027-03-08T00:00";

    /// <summary>The plan of a network with so many people.</summary>
    public static Plan Plan(TextbookNetwork network, int people) => Trial.Plan(File(network, people), Now);

    public static TextbookNetwork Find(string name) => TextbookNetworks.All.Single(network => network.Name == name);

    /// <summary>The id of an activity: "1-2" stays, "A" becomes "a".</summary>
    public static string IdOf(string activity) => activity.ToLowerInvariant();

    private static string File(TextbookNetwork network, int people) => JsonSerializer.Serialize(new
    {
        format = 1,
        name = network.Name,
        zone = "Etc/UTC",
        settings = new { rangeLow = 1, rangeHigh = 1 },
        people = Enumerable.Range(1, people).Select(Person),
        tasks = network.Activities.Select(activity => Task(network, activity)),
    });

    private static object Person(int number) => new
    {
        id = $"p{number}",
        name = $"Person {number}",
        hours = new
        {
            weekly = new[]
            {
                new
                {
                    days = new[] { "monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday" },
                    from = "00:00",
                    to = "00:00",
                },
            },
        },
    };

    private static object Task(TextbookNetwork network, TextbookActivity activity) => new
    {
        id = IdOf(activity.Name),
        name = activity.Name,
        stages = new[] { new { kind = "attended", hours = activity.Duration } },
        links = network.Links.Where(link => link.To == activity.Name).Select(link => new
        {
            task = IdOf(link.From),
            kind = link.Kind switch
            {
                LinkKind.TogetherStart => "togetherStart",
                LinkKind.TogetherFinish => "togetherFinish",
                LinkKind.StartToFinish => "startToFinish",
                _ => "after",
            },
            lagMinutes = link.Lag * 60,
        }),
    };
}
