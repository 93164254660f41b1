using System.Globalization;

namespace EpisodePlanner.Checking.Textbook;

/// <summary>Reads a table of activities the way textbooks print it: "C3:A" is C, of 3, after A.</summary>
internal static class PredecessorTable
{
    /// <summary>The activities, in order, of entries such as "A6", "C3:A" and "H4:B,E"; names are one letter.</summary>
    public static TextbookActivity[] Activities(string table) =>
    [
        .. Entries(table).Select(entry => new TextbookActivity(
            entry[..1], long.Parse(entry.Split(':')[0][1..], CultureInfo.InvariantCulture))),
    ];

    /// <summary>The finish-to-start links of the same entries.</summary>
    public static TextbookLink[] Links(string table) =>
    [
        .. from entry in Entries(table)
           where entry.Contains(':', StringComparison.Ordinal)
           from predecessor in entry.Split(':')[1].Split(',')
           select new TextbookLink(predecessor, entry[..1]),
    ];

    private static string[] Entries(string table) => table.Split(' ', StringSplitOptions.RemoveEmptyEntries);
}
