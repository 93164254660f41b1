using EpisodePlanner.Planning;

namespace EpisodePlanner.Writing;

/// <summary>A sentence and the facts it was made from.</summary>
/// <param name="Text">The sentence.</param>
/// <param name="From">Everything it rests on; take one away and it is no longer said. None where the words are ours alone.</param>
public sealed record Sentence(Markdown Text, ValueList<Fact> From);

/// <summary>How sentences stand on the page.</summary>
public enum BlockKind
{
    /// <summary>A paragraph.</summary>
    Paragraph,

    /// <summary>An item of a list.</summary>
    Item,

    /// <summary>A paragraph in a box of its own.</summary>
    Boxed,
}

/// <summary>Sentences that stand together, and what is quoted below them.</summary>
/// <param name="Kind">How they stand.</param>
/// <param name="Sentences">The sentences; a block without any is not shown.</param>
/// <param name="Quote">Somebody's own words, line by line.</param>
public sealed record Block(BlockKind Kind, ValueList<Sentence> Sentences, ValueList<Sentence> Quote);

/// <summary>A heading and what stands under it; not shown where nothing does.</summary>
/// <param name="Heading">The heading; none where empty.</param>
/// <param name="Level">Its level, 2 or 3.</param>
/// <param name="Blocks">The blocks.</param>
public sealed record Section(Markdown Heading, int Level, ValueList<Block> Blocks);

/// <summary>A whole page.</summary>
/// <param name="Title">The title.</param>
/// <param name="Sections">The sections, in order.</param>
public sealed record Page(Markdown Title, ValueList<Section> Sections)
{
    /// <summary>Every sentence on the page, quoted lines included, in reading order.</summary>
    public IEnumerable<Sentence> Sentences =>
        Sections.SelectMany(section => section.Blocks).SelectMany(block => block.Sentences.Concat(block.Quote));
}
