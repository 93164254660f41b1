using EpisodePlanner.Data;
using EpisodePlanner.Planning;
using EpisodePlanner.Web.Forms;
using EpisodePlanner.Web.Pages;

namespace EpisodePlanner.Web.Features.Editing;

/// <summary>What the page with a form shows.</summary>
public sealed record EditModel
{
    /// <summary>What is edited.</summary>
    public required string Title { get; init; }

    /// <summary>One of its kind, in a sentence.</summary>
    public required string Word { get; init; }

    /// <summary>The workshop's name.</summary>
    public required string WorkshopName { get; init; }

    /// <summary>The pages of the workshop.</summary>
    public required Paths Paths { get; init; }

    /// <summary>The page of the menu that it belongs to.</summary>
    public required DeskPage Page { get; init; }

    /// <summary>Where the form is sent to, and shown by a plain visit.</summary>
    public required string Action { get; init; }

    /// <summary>Where to go without saving.</summary>
    public required string Back { get; init; }

    /// <summary>Whether it is yet to be added.</summary>
    public bool IsNew { get; init; }

    /// <summary>Whether it can be deleted.</summary>
    public bool CanDelete { get; init; } = true;

    /// <summary>The version that was read; what was saved since is a conflict.</summary>
    public long Version { get; init; }

    /// <summary>The form.</summary>
    public required GroupField Form { get; init; }

    /// <summary>Everything that is wrong.</summary>
    public ValueList<EditProblem> Problems { get; init; } = [];

    /// <summary>The name of the field that is to have the focus.</summary>
    public string? FocusOn { get; init; }

    /// <summary>What somebody else changed meanwhile.</summary>
    public Overtaken? Overtaken { get; init; }

    /// <summary>What to mind at this work.</summary>
    public ValueList<Caution> Cautions { get; init; } = [];

    /// <summary>What was just done.</summary>
    public HistoryLine? Done { get; init; }
}

/// <summary>Something that is wrong with what was typed.</summary>
/// <param name="Field">The field's id in the page; null where it belongs to none.</param>
/// <param name="Says">A sentence.</param>
public sealed record EditProblem(string? Field, string Says);

/// <summary>That somebody else saved the same thing after it was read.</summary>
/// <param name="Says">Who changed what, and when.</param>
/// <param name="Differences">The fields in which the two differ.</param>
public sealed record Overtaken(string Says, ValueList<FieldDifference> Differences);

/// <summary>A field in which two versions of a thing differ.</summary>
/// <param name="Label">The field.</param>
/// <param name="Theirs">What stands in the store.</param>
/// <param name="Yours">What was typed.</param>
public sealed record FieldDifference(string Label, string Theirs, string Yours);
