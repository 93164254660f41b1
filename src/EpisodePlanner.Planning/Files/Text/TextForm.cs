namespace EpisodePlanner.Planning.Files.Text;

/// <summary>What came of parsing one text: the value, or a sentence about what is wrong with the text.</summary>
internal readonly record struct Parsed<T>(T Value, string? Problem);

/// <summary>How values of one type are written as text.</summary>
internal sealed record TextForm<T>
{
    /// <summary>What would be right, for sentences.</summary>
    public required string Wanted { get; init; }

    /// <summary>Reads a text.</summary>
    public required Func<string, Parsed<T>> Parse { get; init; }

    /// <summary>Writes a value in its one canonical form.</summary>
    public required Func<T, string> Format { get; init; }

    /// <summary>The regular expression of the form, for the schema.</summary>
    public required string Pattern { get; init; }

    /// <summary>The schema's name of the format, where it has one.</summary>
    public string? SchemaFormat { get; init; }

    /// <summary>Stands in for a text that can't be read.</summary>
    public T Placeholder { get; init; } = default!;
}
