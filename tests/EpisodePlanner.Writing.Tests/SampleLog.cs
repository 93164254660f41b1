using EpisodePlanner.Planning;
using NodaTime;
using static EpisodePlanner.Planning.LogOutcome;

namespace EpisodePlanner.Writing.Tests;

/// <summary>The log of the sample workshop.</summary>
internal static class SampleLog
{
    public static IEnumerable<LogEntry> All() =>
    [
        Entry("l1", "castings", SampleWorkshop.At(11, 6, 12), 5_760, Done),
        Entry("l2", "turn", SampleWorkshop.At(11, 11, 21), 180, Partly) with { RemainingMinutes = 420 },
        Entry("l3", "turn", SampleWorkshop.At(11, 14, 18), 390, Done) with { Note = "Third wheel came out best.\nLeave the tool post alone now!" },
        Entry("l4", "test", SampleWorkshop.At(11, 18, 21), 120, Failed) with { Note = "Lever snapped at half load" },
        Entry("l5", "test", SampleWorkshop.At(11, 21, 17), 240, Done),
        Entry("l6", "shoes", SampleWorkshop.At(11, 25, 9), 840, Failed) with { Stage = new("1"), Station = new("printer") },
        Entry("l7", "gearbox", SampleWorkshop.At(11, 29, 20), 60, Partly),
        Entry("l8", "shelf", SampleWorkshop.At(11, 28, 12), 45, Done),
        Entry("l9", "turn", SampleWorkshop.At(12, 2, 12), 45, Done) with { Note = "not yet" },
    ];

    private static LogEntry Entry(string id, string task, Instant at, int minutes, LogOutcome outcome) =>
        new() { Id = new(id), Task = new(task), At = at, Minutes = minutes, Outcome = outcome };
}
