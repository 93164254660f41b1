namespace EpisodePlanner.Checking.Textbook;

internal static class ReliableConstruction
{
    private const string Table =
        "A2 B4:A C10:B D6:C E4:C F5:E G7:D H9:E,G I7:C J8:F,I K4:J L5:J M2:H N6:K,L";

    public static TextbookNetwork Network { get; } = new(
        "Reliable Construction Co.",
        "Hillier & Lieberman, Introduction to Operations Research [predecessors from memory; 44 weeks published]",
        "week",
        PredecessorTable.Activities(Table),
        PredecessorTable.Links(Table),
        [
            // All dates and floats: computed from the predecessors above.
            new("A", 0, 2, 0, 2, 0, 0),
            new("B", 2, 6, 2, 6, 0, 0),
            new("C", 6, 16, 6, 16, 0, 0),
            new("D", 16, 22, 20, 26, 4, 0),
            new("E", 16, 20, 16, 20, 0, 0),
            new("F", 20, 25, 20, 25, 0, 0),
            new("G", 22, 29, 26, 33, 4, 0),
            new("H", 29, 38, 33, 42, 4, 0),
            new("I", 16, 23, 18, 25, 2, 2),
            new("J", 25, 33, 25, 33, 0, 0),
            new("K", 33, 37, 34, 38, 1, 1),
            new("L", 33, 38, 33, 38, 0, 0),
            new("M", 38, 40, 42, 44, 4, 4),
            new("N", 38, 44, 38, 44, 0, 0),
        ],
        44, // published, in the source above
        ["A", "B", "C", "E", "F", "J", "L", "N"]); // computed
}
