using EpisodePlanner.Planning;

namespace EpisodePlanner.Web.Forms;

/// <summary>A field of a form, with what was typed and what is wrong with it.</summary>
public abstract record FormField
{
    /// <summary>Its name in the form, a path into the thing: "stages[0].hours".</summary>
    public required string Name { get; init; }

    /// <summary>What it is called.</summary>
    public required string Label { get; init; }

    /// <summary>What it means, in a sentence; null where the label says it.</summary>
    public string? Help { get; init; }

    /// <summary>Whether it must be given.</summary>
    public bool IsRequired { get; init; }

    /// <summary>Whether it is filled in now and then only, so that it may stand apart.</summary>
    public bool IsRare { get; init; }

    /// <summary>What is wrong with it, sentence by sentence.</summary>
    public ValueList<string> Problems { get; init; } = [];

    /// <summary>Its id in the page.</summary>
    public string ElementId => "f-" + string.Concat(Name.Select(c => char.IsAsciiLetterOrDigit(c) ? c : '-'));

    /// <summary>Whether anything stands in it or is wrong with it.</summary>
    public abstract bool IsTouched { get; }

    /// <summary>The field and all fields in it.</summary>
    public virtual IEnumerable<FormField> WithAllInside() => [this];
}

/// <summary>A line or several lines of text, a day, a time, or a number.</summary>
public sealed record TextField : FormField
{
    /// <inheritdoc/>
    public override bool IsTouched => Value.Length > 0 || Problems.Count > 0;

    /// <summary>What stands in it, as it was typed.</summary>
    public required string Value { get; init; }

    /// <summary>What is typed into it: text, date, time, datetime-local or number.</summary>
    public string Type { get; init; } = "text";

    /// <summary>Whether it has several lines.</summary>
    public bool ManyLines { get; init; }

    /// <summary>The most characters, or null.</summary>
    public int? Longest { get; init; }

    /// <summary>The least number, as it is written, or null.</summary>
    public string? Least { get; init; }

    /// <summary>The greatest number, as it is written, or null.</summary>
    public string? Most { get; init; }

    /// <summary>Whether only whole numbers will do.</summary>
    public bool IsWhole { get; init; }
}

/// <summary>Yes or no.</summary>
public sealed record TickField : FormField
{
    /// <inheritdoc/>
    public override bool IsTouched => IsTicked || Problems.Count > 0;

    /// <summary>Whether it is ticked.</summary>
    public required bool IsTicked { get; init; }
}

/// <summary>One of a few, or several of them.</summary>
public sealed record ChoiceField : FormField
{
    /// <inheritdoc/>
    public override bool IsTouched => Chosen.Count > 0 || Problems.Count > 0;

    /// <summary>What can be chosen, in order.</summary>
    public required ValueList<FormOption> Options { get; init; }

    /// <summary>What is chosen.</summary>
    public required ValueList<string> Chosen { get; init; }

    /// <summary>Whether several can be chosen.</summary>
    public bool IsMany { get; init; }
}

/// <summary>Something that can be chosen.</summary>
/// <param name="Value">Its value.</param>
/// <param name="Label">What it is called.</param>
public sealed record FormOption(string Value, string Label);

/// <summary>Fields that belong together.</summary>
public sealed record GroupField : FormField
{
    /// <inheritdoc/>
    public override bool IsTouched => Fields.Any(inner => inner.IsTouched) || Problems.Count > 0;

    /// <summary>The fields.</summary>
    public required ValueList<FormField> Fields { get; init; }

    /// <inheritdoc/>
    public override IEnumerable<FormField> WithAllInside() => Fields.SelectMany(field => field.WithAllInside()).Prepend(this);
}

/// <summary>Groups of fields that can be added and removed.</summary>
public sealed record ListField : FormField
{
    /// <inheritdoc/>
    public override bool IsTouched => Items.Count > 0 || Problems.Count > 0;

    /// <summary>The groups in order.</summary>
    public required ValueList<GroupField> Items { get; init; }

    /// <summary>What one of them is called: "stage".</summary>
    public required string ItemWord { get; init; }

    /// <inheritdoc/>
    public override IEnumerable<FormField> WithAllInside() => Items.SelectMany(item => item.WithAllInside()).Prepend(this);
}

/// <summary>Something that the form carries along without showing it.</summary>
public sealed record HiddenField : FormField
{
    /// <inheritdoc/>
    public override bool IsTouched => false;

    /// <summary>What it carries.</summary>
    public required string Value { get; init; }
}
