using System.Text;
using System.Text.Json;
using System.Text.Unicode;
using EpisodePlanner.Planning.Files.Text;

namespace EpisodePlanner.Planning.Files;

/// <summary>Tells, before any value is looked at, whether a file is JSON in UTF-8 of a bearable size and depth.</summary>
internal static class Syntax
{
    /// <summary>The deepest nesting that is read.</summary>
    public const int DeepestNesting = 32;

    /// <summary>What is wrong with the bytes, or null.</summary>
    public static string? Problem(ReadOnlySpan<byte> bytes) =>
        SizeProblem(bytes) ?? EncodingProblem(bytes) ?? GrammarProblem(bytes);

    private static string? SizeProblem(ReadOnlySpan<byte> bytes) => bytes.Length switch
    {
        0 => "The file is empty; the least is { \"format\": 1, \"name\": \"My workshop\", \"zone\": \"Europe/Dublin\" }.",
        > WorkshopFile.MaximumBytes => $"The file has {Say.Number(bytes.Length)} bytes; at most "
            + $"{Say.Number(WorkshopFile.MaximumBytes)} are read.",
        _ => null,
    };

    private static string? EncodingProblem(ReadOnlySpan<byte> bytes)
    {
        if (bytes is [0xEF, 0xBB, 0xBF, ..])
        {
            return "Wrong encoding: the file begins with a byte order mark; save it as UTF-8 without one.";
        }

        if (bytes is [0xFE, 0xFF, ..] or [0xFF, 0xFE, ..] or [0, ..] or [_, 0, ..])
        {
            return "Wrong encoding: the file is UTF-16 or UTF-32; save it as UTF-8.";
        }

        return Utf8.IsValid(bytes) ? null : InvalidProblem(bytes);
    }

    private static string InvalidProblem(ReadOnlySpan<byte> bytes)
    {
        var at = 0;
        while (Rune.DecodeFromUtf8(bytes[at..], out _, out var length) == System.Buffers.OperationStatus.Done)
        {
            at += length;
        }

        return $"Wrong encoding: {Position(bytes, at)}: the byte 0x{bytes[at]:X2} is not UTF-8; save the file as UTF-8.";
    }

    private static string? GrammarProblem(ReadOnlySpan<byte> bytes)
    {
        var reader = new Utf8JsonReader(bytes, new JsonReaderOptions { MaxDepth = DeepestNesting + 2 });
        try
        {
            while (reader.Read())
            {
                if (reader.CurrentDepth >= DeepestNesting && IsOpening(reader.TokenType))
                {
                    return $"{Position(bytes, (int)reader.TokenStartIndex)}: objects and arrays are nested deeper than "
                        + $"{DeepestNesting}; a workshop needs no more than 10.";
                }
            }
        }
        catch (JsonException problem)
        {
            return GrammarSentences.Of(bytes, Offset(bytes, problem));
        }

        return null;
    }

    private static bool IsOpening(JsonTokenType token) =>
        token is JsonTokenType.StartObject or JsonTokenType.StartArray;

    /// <summary>A place for people: "line 3, column 5", both from 1, columns in characters.</summary>
    public static string Position(ReadOnlySpan<byte> bytes, int offset)
    {
        var before = bytes[..offset];
        var line = before.Count((byte)'\n') + 1;
        var column = Encoding.UTF8.GetCharCount(before[(before.LastIndexOf((byte)'\n') + 1)..]) + 1;
        return $"Line {line}, column {column}";
    }

    private static int Offset(ReadOnlySpan<byte> bytes, JsonException problem)
    {
        var start = 0;
        for (var line = problem.LineNumber ?? 0; line > 0; line--)
        {
            start += bytes[start..].IndexOf((byte)'\n') + 1;
        }

        return Math.Min(bytes.Length, start + (int)(problem.BytePositionInLine ?? 0));
    }
}
