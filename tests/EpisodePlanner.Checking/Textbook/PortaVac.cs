namespace EpisodePlanner.Checking.Textbook;

internal static class PortaVac
{
    private const string Table = "A6 B2 C3:A D5:A E3:A F2:C G3:D H4:B,E I2:H J2:F,G,I";

    public static TextbookNetwork Network { get; } = new(
        "Porta-Vac",
        "Anderson, Sweeney, Williams et al., An Introduction to Management Science, pp. 386-387 [published]",
        "week",
        PredecessorTable.Activities(Table),
        PredecessorTable.Links(Table),
        [
            // Early and late dates and total float: published, in the source above. Free float of B, C, D, F and G:
            // computed; of the critical activities it is 0, because it can't exceed a total float of 0 here.
            new("A", 0, 6, 0, 6, 0, 0),
            new("B", 0, 2, 7, 9, 7, 7),
            new("C", 6, 9, 10, 13, 4, 0),
            new("D", 6, 11, 7, 12, 1, 0),
            new("E", 6, 9, 6, 9, 0, 0),
            new("F", 9, 11, 13, 15, 4, 4),
            new("G", 11, 14, 12, 15, 1, 1),
            new("H", 9, 13, 9, 13, 0, 0),
            new("I", 13, 15, 13, 15, 0, 0),
            new("J", 15, 17, 15, 17, 0, 0),
        ],
        17, // published, same pages
        ["A", "E", "H", "I", "J"]); // published, same pages
}
