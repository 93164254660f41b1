namespace EpisodePlanner.Web.Telling;

/// <summary>Something on which answers are written in words: a terminal, a page.</summary>
public interface ISheet
{
    /// <summary>A heading; what follows belongs to it.</summary>
    void Heading(string text);

    /// <summary>A paragraph under a heading.</summary>
    void Paragraph(string text);

    /// <summary>An item of a list.</summary>
    void Item(string text);

    /// <summary>A line below an item or paragraph that belongs to it.</summary>
    void Below(string text);
}
