namespace EpisodePlanner.Planning;

/// <summary>
/// The name by which one thing in a workshop is known to the others: 1 to 64 letters, digits, dots, dashes and
/// underscores, the first a letter or digit. Made inside it is a UUIDv7; a hand-written file may use short names.
/// </summary>
/// <remarks>Ordered by code point, which is the order of things in the workshop file.</remarks>
public readonly record struct Id : IComparable<Id>
{
    /// <summary>The longest id, in characters.</summary>
    public const int MaximumLength = 64;

    private readonly string? text;

    /// <summary>An id with the given text.</summary>
    /// <exception cref="ArgumentException">The text is not an id; test with <see cref="IsValid"/> first.</exception>
    public Id(string text)
    {
        if (!IsValid(text))
        {
            throw new ArgumentException($"'{text}' is not an id.", nameof(text));
        }

        this.text = text;
    }

    /// <summary>True for the default value, which names nothing: a hand-written thing whose id import will choose.</summary>
    public bool IsEmpty => text is null;

    /// <summary>Whether a text can be an id.</summary>
    public static bool IsValid(string? text) =>
        text is { Length: > 0 and <= MaximumLength } && char.IsAsciiLetterOrDigit(text[0]) && text.All(IsIdCharacter);

    /// <inheritdoc/>
    public int CompareTo(Id other) => string.CompareOrdinal(text, other.text);

    /// <summary>The id's text; empty for the default value.</summary>
    public override string ToString() => text ?? "";

    private static bool IsIdCharacter(char c) => char.IsAsciiLetterOrDigit(c) || c is '.' or '-' or '_';

    /// <summary>Whether the left id comes first.</summary>
    public static bool operator <(Id left, Id right) => left.CompareTo(right) < 0;

    /// <summary>Whether the left id comes first or is the same.</summary>
    public static bool operator <=(Id left, Id right) => left.CompareTo(right) <= 0;

    /// <summary>Whether the left id comes last.</summary>
    public static bool operator >(Id left, Id right) => left.CompareTo(right) > 0;

    /// <summary>Whether the left id comes last or is the same.</summary>
    public static bool operator >=(Id left, Id right) => left.CompareTo(right) >= 0;
}
