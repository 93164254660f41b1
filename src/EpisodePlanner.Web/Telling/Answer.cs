using EpisodePlanner.Planning;

namespace EpisodePlanner.Web.Telling;

/// <summary>A written answer: a heading and what stands under it.</summary>
/// <param name="Heading">The question it answers.</param>
/// <param name="Paragraphs">Paragraphs and items in order.</param>
public sealed record Answer(string Heading, ValueList<AnswerLine> Paragraphs);

/// <summary>A paragraph or an item of an answer.</summary>
/// <param name="Text">What it says.</param>
/// <param name="IsItem">Whether it is one of a list.</param>
/// <param name="Below">Lines that belong to it: its reasons.</param>
public sealed record AnswerLine(string Text, bool IsItem, ValueList<string> Below);

/// <summary>Keeps what is written on it, for pages that lay it out themselves.</summary>
internal sealed class AnswerSheet : ISheet
{
    private readonly List<(string Heading, List<AnswerLine> Lines)> answers = [];

    /// <summary>What was written, heading by heading.</summary>
    public ValueList<Answer> Answers =>
        answers.Select(answer => new Answer(answer.Heading, answer.Lines.ToValueList())).ToValueList();

    /// <summary>What a writer has to say.</summary>
    public static ValueList<Answer> Of(Action<ISheet> write)
    {
        var sheet = new AnswerSheet();
        write(sheet);
        return sheet.Answers;
    }

    public void Heading(string text) => answers.Add((text, []));

    public void Paragraph(string text) => Lines.Add(new AnswerLine(text, false, []));

    public void Item(string text) => Lines.Add(new AnswerLine(text, true, []));

    public void Below(string text)
    {
        if (Lines.Count == 0)
        {
            Paragraph(text);
            return;
        }

        Lines[^1] = Lines[^1] with { Below = [.. Lines[^1].Below, text] };
    }

    private List<AnswerLine> Lines
    {
        get
        {
            if (answers.Count == 0)
            {
                Heading("");
            }

            return answers[^1].Lines;
        }
    }
}
