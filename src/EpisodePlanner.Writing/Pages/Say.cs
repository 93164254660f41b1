using EpisodePlanner.Planning;

namespace EpisodePlanner.Writing;

/// <summary>Short ways to put a page together.</summary>
internal static class Say
{
    public static Sentence From(ref MarkdownHandler text, params IEnumerable<Fact> facts) =>
        new(Markdown.Of(ref text), facts.ToValueList());

    public static Block Paragraph(params IEnumerable<Sentence> sentences) =>
        new(BlockKind.Paragraph, sentences.ToValueList(), []);

    public static Block Item(params IEnumerable<Sentence> sentences) =>
        new(BlockKind.Item, sentences.ToValueList(), []);

    public static Block Boxed(params IEnumerable<Sentence> sentences) =>
        new(BlockKind.Boxed, sentences.ToValueList(), []);

    public static Section Section(int level, ref MarkdownHandler heading, params IEnumerable<Block> blocks) =>
        new(Markdown.Of(ref heading), level, blocks.Where(block => block.Sentences.Count > 0).ToValueList());

    /// <summary>Somebody's own words, a sentence a line, empty lines left out.</summary>
    public static ValueList<Sentence> Quote(string? words, Fact fact) => (words ?? "")
        .Split(['\r', '\n'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
        .Select(line => From($"{line}", fact))
        .Where(sentence => !sentence.Text.IsEmpty)
        .ToValueList();
}
