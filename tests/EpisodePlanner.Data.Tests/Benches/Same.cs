using EpisodePlanner.Planning.Files;

namespace EpisodePlanner.Data.Tests;

/// <summary>Holds snapshots against each other, to the byte.</summary>
internal static class Same
{
    public static void Snapshots(Snapshot expected, Snapshot actual)
    {
        Assert.Equal(expected.Workshop, actual.Workshop);
        Assert.Equal(WorkshopFile.Write(expected.Workshop), WorkshopFile.Write(actual.Workshop));
        Assert.Equal((expected.Id, expected.Version, expected.PlannedAt), (actual.Id, actual.Version, actual.PlannedAt));
        Assert.Equal(Sorted(expected), Sorted(actual));
    }

    private static IEnumerable<string> Sorted(Snapshot snapshot) =>
        snapshot.Versions.Select(pair => $"{pair.Key} {pair.Value}").Order(StringComparer.Ordinal);
}
