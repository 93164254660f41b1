using static EpisodePlanner.Scheduling.LinkKind;

namespace EpisodePlanner.Checking.Textbook;

internal static class StartToStart
{
    public static TextbookNetwork Network { get; } = new(
        "Start-to-start links",
        "A precedence diagram with start-to-start links [inputs published, no title recorded; dates computed]",
        "unnamed",
        PredecessorTable.Activities("A2 B10 C13 D12 E12 F7 G10 H16 I6 J12 K5 L8 M5 N3"),
        [
            // Published inputs; no lags.
            new("A", "B", TogetherStart), new("A", "C"), new("A", "D"), new("B", "E"), new("B", "F"), new("D", "G"),
            new("D", "H"), new("F", "I"), new("C", "J"), new("G", "J", TogetherStart), new("I", "K", TogetherStart),
            new("E", "L"), new("I", "L"), new("K", "L"), new("H", "M"), new("G", "N"), new("J", "N"), new("L", "N"),
            new("M", "N"),
        ],
        [
            // All dates and floats: computed from the inputs above.
            new("A", 0, 2, 0, 2, 0, 0),
            new("B", 0, 10, 4, 14, 4, 0),
            new("C", 2, 15, 10, 23, 8, 0),
            new("D", 2, 14, 2, 14, 0, 0),
            new("E", 10, 22, 15, 27, 5, 1),
            new("F", 10, 17, 14, 21, 4, 0),
            new("G", 14, 24, 23, 33, 9, 1),
            new("H", 14, 30, 14, 30, 0, 0),
            new("I", 17, 23, 21, 27, 4, 0),
            new("J", 15, 27, 23, 35, 8, 8),
            new("K", 17, 22, 22, 27, 5, 1),
            new("L", 23, 31, 27, 35, 4, 4),
            new("M", 30, 35, 30, 35, 0, 0),
            new("N", 35, 38, 35, 38, 0, 0),
        ],
        38, // computed
        ["A", "D", "H", "M", "N"]); // computed
}
