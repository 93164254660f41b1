namespace EpisodePlanner.Benchmarks.Measuring;

/// <summary>Rows of words and figures in columns: the first column to the left, the others to the right.</summary>
internal sealed class Table(params string[] head)
{
    private readonly List<string[]> rows = [head];

    public void Add(params string[] row) => rows.Add(row);

    public void Print(TextWriter page)
    {
        var widths = Enumerable.Range(0, head.Length).Select(column => rows.Max(row => row[column].Length)).ToArray();
        foreach (var row in rows)
        {
            var cells = row.Select((cell, column) => column == 0 ? cell.PadRight(widths[0]) : cell.PadLeft(widths[column]));
            page.WriteLine(string.Join("  ", cells).TrimEnd());
        }
    }
}
