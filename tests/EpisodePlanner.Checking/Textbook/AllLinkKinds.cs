using static EpisodePlanner.Scheduling.LinkKind;

namespace EpisodePlanner.Checking.Textbook;

internal static class AllLinkKinds
{
    public static TextbookNetwork Network { get; } = new(
        "All four kinds of link, with lags",
        "Made up for the purpose [computed, by two methods]",
        "unnamed",
        PredecessorTable.Activities("A4 B6 C5 D3 E2 F1"),
        [
            new("A", "B", After, 2), new("A", "C", TogetherStart, 3), new("B", "D", TogetherFinish, 1), new("C", "D"),
            new("D", "E", StartToFinish, 7), new("E", "F"), new("D", "F"),
        ],
        [
            // Early and late starts and floats: computed by two methods. The finishes are a duration later.
            new("A", 0, 4, 0, 4, 0, 0),
            new("B", 6, 12, 6, 12, 0, 0),
            new("C", 3, 8, 5, 10, 2, 2),
            new("D", 10, 13, 10, 13, 0, 0),
            new("E", 15, 17, 15, 17, 0, 0),
            new("F", 17, 18, 17, 18, 0, 0),
        ],
        18, // computed by two methods
        ["A", "B", "D", "E", "F"]); // computed: only C has float
}
