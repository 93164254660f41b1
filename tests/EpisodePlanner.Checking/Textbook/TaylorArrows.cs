namespace EpisodePlanner.Checking.Textbook;

/// <summary>
/// A network drawn with activities on its arrows, one of them a dummy of no length. Arc i-j becomes an activity that
/// comes after every arc x-i.
/// </summary>
internal static class TaylorArrows
{
    private static readonly TextbookActivity[] Arcs =
    [
        new("1-2", 8), new("1-3", 10), new("1-4", 9), new("2-5", 6), new("2-6", 4), new("3-5", 5), new("4-5", 0),
        new("4-7", 7), new("5-7", 12), new("5-8", 15), new("6-9", 18), new("7-8", 4), new("8-9", 7),
    ];

    public static TextbookNetwork Network { get; } = new(
        "Taylor, activities on arrows",
        "Taylor, Introduction to Management Science, ch. 8 [published]",
        "unnamed",
        Arcs,
        [
            .. from before in Arcs
               from after in Arcs
               where before.Name[2] == after.Name[0]
               select new TextbookLink(before.Name, after.Name),
        ],
        [
            // Early and late dates and total float: published, in the source above; it gives no free float.
            new("1-2", 0, 8, 1, 9, 1),
            new("1-3", 0, 10, 0, 10, 0),
            new("1-4", 0, 9, 6, 15, 6),
            new("2-5", 8, 14, 9, 15, 1),
            new("2-6", 8, 12, 16, 20, 8),
            new("3-5", 10, 15, 10, 15, 0),
            new("4-5", 9, 9, 15, 15, 6),
            new("4-7", 9, 16, 20, 27, 11),
            new("5-7", 15, 27, 15, 27, 0),
            new("5-8", 15, 30, 16, 31, 1),
            new("6-9", 12, 30, 20, 38, 8),
            new("7-8", 27, 31, 27, 31, 0),
            new("8-9", 31, 38, 31, 38, 0),
        ],
        38, // published, same chapter
        ["1-3", "3-5", "5-7", "7-8", "8-9"]); // published: the only arcs whose float is 0
}
