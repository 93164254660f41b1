namespace EpisodePlanner.Checking.Textbook;

internal static class NineActivities
{
    private const string Table = "A4 B3 C8:A D7:A E9:B,C F12:B,C G2:D,E H5:D,E I6:F,G";

    public static TextbookNetwork Network { get; } = new(
        "Nine activities",
        "Hendrickson & Au, Project Management for Construction, ch. 10 [from memory; the arithmetic computed]",
        "unnamed",
        PredecessorTable.Activities(Table),
        PredecessorTable.Links(Table),
        [
            // Total floats: from memory, recomputed. No dates are recorded.
            new("A", TotalFloat: 0),
            new("B", TotalFloat: 9),
            new("C", TotalFloat: 0),
            new("D", TotalFloat: 11),
            new("E", TotalFloat: 1),
            new("F", TotalFloat: 0),
            new("G", TotalFloat: 1),
            new("H", TotalFloat: 4),
            new("I", TotalFloat: 0),
        ],
        30, // from memory, recomputed
        ["A", "C", "F", "I"]); // from memory, recomputed
}
