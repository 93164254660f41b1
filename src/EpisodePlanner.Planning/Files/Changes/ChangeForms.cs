using System.ComponentModel.DataAnnotations;

namespace EpisodePlanner.Planning.Files;

/// <summary>A change as it is written; the shapes of records read and write it.</summary>
internal interface IChangeForm
{
    /// <summary>The change, or a sentence about what is wrong with the form.</summary>
    Change? ToChange(out string problem);
}

/// <summary>A thing comes, changes or goes.</summary>
internal sealed record ThingForm<T> : IChangeForm
    where T : class, IThing
{
    /// <summary>Which kind of change it is.</summary>
    [StringLength(40)]
    public required string Kind { get; init; }

    /// <summary>The thing.</summary>
    public required Id Id { get; init; }

    /// <summary>The thing as it shall be.</summary>
    public T? To { get; init; }

    /// <summary>Whether the thing shall go, in place of "to".</summary>
    public bool Remove { get; init; }

    /// <summary>The set of things that is meant.</summary>
    public static ThingKind<T> Set { get; } = ThingKinds.All.OfType<ThingKind<T>>().Single();

    public Change? ToChange(out string problem)
    {
        problem = (To is null, Remove) switch
        {
            (true, false) => $"Give the {Set.Word} under 'to', or write \"remove\": true.",
            (false, true) => "Here stand both 'to' and 'remove'; keep one of them.",
            _ => "",
        };
        return problem.Length > 0 ? null : Set.ChangeTo(Id, To is null ? null : ImportCompletion.WithId(To, Id));
    }
}

/// <summary>Another name or zone.</summary>
internal sealed record TextForm : IChangeForm
{
    /// <summary>Which kind of change it is.</summary>
    [StringLength(40)]
    public required string Kind { get; init; }

    /// <summary>The new text.</summary>
    [StringLength(200, MinimumLength = 1)]
    public required string To { get; init; }

    public Change ToChange(out string problem)
    {
        problem = "";
        return Kind == ChangeKinds.Zone ? new ZoneChange(To) : new NameChange(To);
    }
}

/// <summary>Other settings.</summary>
internal sealed record SettingsForm : IChangeForm
{
    /// <summary>Which kind of change it is.</summary>
    [StringLength(40)]
    public required string Kind { get; init; }

    /// <summary>The new settings.</summary>
    public required Settings To { get; init; }

    public Change ToChange(out string problem)
    {
        problem = "";
        return new SettingsChange(To);
    }
}

/// <summary>A plan accepted, or let go of.</summary>
internal sealed record AcceptedForm : IChangeForm
{
    /// <summary>Which kind of change it is.</summary>
    [StringLength(40)]
    public required string Kind { get; init; }

    /// <summary>The accepted plan; absent where none is accepted any more.</summary>
    public AcceptedPlan? To { get; init; }

    public Change ToChange(out string problem)
    {
        problem = "";
        return new AcceptedPlanChange(To);
    }
}

/// <summary>The undo of a told date's addition.</summary>
internal sealed record TakenBackForm : IChangeForm
{
    /// <summary>Which kind of change it is.</summary>
    [StringLength(40)]
    public required string Kind { get; init; }

    /// <summary>The told date as it was.</summary>
    public required ToldDate Was { get; init; }

    public Change ToChange(out string problem)
    {
        problem = "";
        return new ToldDateTakenBack(Was);
    }
}

/// <summary>Several changes, all or none.</summary>
internal sealed record BatchForm : IChangeForm
{
    /// <summary>Which kind of change it is.</summary>
    [StringLength(40)]
    public required string Kind { get; init; }

    /// <summary>The changes in order.</summary>
    [MaxLength(ChangeFile.MostChanges)]
    public required ValueList<Change> Changes { get; init; }

    public Change ToChange(out string problem)
    {
        problem = "";
        return new Batch(Changes);
    }
}
