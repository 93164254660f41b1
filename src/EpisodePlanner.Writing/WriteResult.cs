using EpisodePlanner.Planning;

namespace EpisodePlanner.Writing;

/// <summary>What came of writing: <see cref="Written"/> or <see cref="NotWritten"/>.</summary>
public abstract record WriteResult
{
    private protected WriteResult()
    {
    }
}

/// <summary>It was written.</summary>
/// <param name="Page">The page, each sentence with the facts behind it.</param>
/// <param name="Markdown">The page as Markdown.</param>
public sealed record Written(Page Page, string Markdown) : WriteResult;

/// <summary>It could not be written.</summary>
/// <param name="Reasons">Why, at least one reason.</param>
public sealed record NotWritten(ValueList<Reason> Reasons) : WriteResult;
