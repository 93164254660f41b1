using System.Text;

namespace EpisodePlanner.Writing;

/// <summary>Lays a <see cref="Page"/> out as Markdown that also reads well as plain text.</summary>
internal static class MarkdownPage
{
    public static string Write(Page page)
    {
        var text = new StringBuilder($"# {page.Title}\n");
        foreach (var section in page.Sections.Where(section => section.Blocks.Count > 0))
        {
            AppendHeading(text, section);
            AppendBlocks(text, section);
        }

        return text.ToString();
    }

    private static void AppendHeading(StringBuilder text, Section section)
    {
        if (!section.Heading.IsEmpty)
        {
            text.Append($"\n{new string('#', section.Level)} {section.Heading}\n");
        }
    }

    private static void AppendBlocks(StringBuilder text, Section section)
    {
        Block? before = null;
        foreach (var block in section.Blocks)
        {
            text.Append(Gap(before, block)).Append(Mark(block.Kind));
            text.AppendJoin(' ', block.Sentences.Select(sentence => sentence.Text)).Append('\n');
            AppendQuote(text, block);
            before = block;
        }
    }

    private static void AppendQuote(StringBuilder text, Block block)
    {
        var indent = block.Kind == BlockKind.Item ? "  " : "";
        var first = block.Kind == BlockKind.Item ? "" : "\n";
        foreach (var line in block.Quote)
        {
            text.Append($"{first}{indent}> {line.Text}\n");
            first = $"{indent}>\n";
        }
    }

    private static string Gap(Block? before, Block block) => (before?.Kind, block.Kind) switch
    {
        (BlockKind.Item, BlockKind.Item) => "",
        (BlockKind.Boxed, BlockKind.Boxed) => ">\n",
        _ => "\n",
    };

    private static string Mark(BlockKind kind) => kind switch
    {
        BlockKind.Item => "- ",
        BlockKind.Boxed => "> ",
        _ => "",
    };
}
