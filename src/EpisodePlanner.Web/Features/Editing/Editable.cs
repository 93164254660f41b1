using System.Text;
using System.Text.Json.Nodes;
using EpisodePlanner.Planning;
using EpisodePlanner.Planning.Files;
using EpisodePlanner.Web.Forms;
using EpisodePlanner.Web.Pages;

namespace EpisodePlanner.Web.Features.Editing;

/// <summary>Something of a workshop that has a form: how it is read, changed and named.</summary>
internal abstract class Editable
{
    /// <summary>Its record in the schema.</summary>
    public abstract string Definition { get; }

    /// <summary>What is stored and versioned as one.</summary>
    public abstract Aggregate What { get; }

    /// <summary>What it is called in a sentence.</summary>
    public abstract string Word { get; }

    /// <summary>The page of the menu that it belongs to.</summary>
    public abstract DeskPage Page { get; }

    /// <summary>What it is headed by.</summary>
    public abstract string Title(Workshop workshop);

    /// <summary>What stands in it now; null where it does not exist.</summary>
    public abstract JsonObject? Current(Workshop workshop);

    /// <summary>The change that makes it as it was typed; null, with reasons whose places are paths into it.</summary>
    public abstract Change? Change(JsonObject typed, Workshop workshop, out ValueList<Reason> reasons);

    /// <summary>The change that removes it; null where it can't be removed.</summary>
    public virtual Change? Removal => null;

    /// <summary>The page to go to when it is saved.</summary>
    public abstract string Back(Workshop workshop, Paths paths);

    /// <summary>What to mind at it.</summary>
    public virtual ValueList<Caution> Cautions(Workshop workshop) => [];

    /// <summary>A reason about the workshop as one about this thing: "$.tasks['weld'].name" is "$.name".</summary>
    public Reason Within(Reason reason)
    {
        var own = $"$.{What.Kind}['{What.Id}']";
        return reason.Where.StartsWith(own, StringComparison.Ordinal) ? reason with { Where = $"${reason.Where[own.Length..]}" } : reason;
    }

    /// <summary>The bytes of a document.</summary>
    protected static byte[] Bytes(JsonObject document) => Encoding.UTF8.GetBytes(document.ToJsonString());
}

/// <summary>A thing of one of the workshop's sets.</summary>
/// <param name="kind">The set.</param>
/// <param name="id">The thing.</param>
internal sealed class EditableThing(ThingKind kind, Id id) : Editable
{
    public override string Definition => FormDefinitions.Of(kind);

    public override Aggregate What => kind.Of(id);

    public override string Word => kind.Word;

    public override Change? Removal => kind == ThingKinds.ToldDates ? null : kind.Remove(id);

    public override DeskPage Page => kind.Name switch
    {
        "people" or "machines" or "places" => DeskPage.Stations,
        "series" or "tasks" or "uploads" or "log" or "episodes" => DeskPage.Series,
        _ => DeskPage.Settings,
    };

    public override string Title(Workshop workshop) => kind.Find(workshop, id) is { } thing
        ? $"{char.ToUpperInvariant(kind.Word[0])}{kind.Word[1..]}: {ThingNames.Of(thing)}"
        : $"A new {kind.Word}";

    public override JsonObject? Current(Workshop workshop) =>
        kind.Find(workshop, id) is { } thing ? JsonNode.Parse(kind.Write(thing))!.AsObject() : null;

    public override Change? Change(JsonObject typed, Workshop workshop, out ValueList<Reason> reasons) =>
        kind.Read(Bytes(typed), out reasons) is { } thing ? kind.Put(kind.Complete(thing, id, workshop)) : null;

    public override string Back(Workshop workshop, Paths paths) => Page switch
    {
        DeskPage.Stations => paths.Stations,
        DeskPage.Settings => paths.Settings,
        _ => SeriesOf(workshop) is { } series ? paths.OfSeries(series) : paths.Series,
    };

    public override ValueList<Caution> Cautions(Workshop workshop) => kind.Find(workshop, id) switch
    {
        WorkTask task => Planning.Cautions.For(task, workshop),
        Machine machine => [.. Planning.Cautions.For(machine.Kind), Planning.Cautions.ForRunningAlone(machine.Kind)],
        _ => [],
    };

    private Id? SeriesOf(Workshop workshop) => kind.Find(workshop, id) switch
    {
        Series series => series.Id,
        WorkTask { Series: { } series } => series,
        WorkTask { Milestone: { } shown } => workshop.Series.FirstOrDefault(s => s.Milestones.Any(m => m.Id == shown))?.Id,
        Episode episode => episode.Series,
        Upload upload => upload.Series,
        _ => null,
    };
}

/// <summary>The settings.</summary>
internal sealed class EditableSettings : Editable
{
    public override string Definition => "settings";

    public override Aggregate What => Aggregate.Settings;

    public override string Word => "settings";

    public override DeskPage Page => DeskPage.Settings;

    public override string Title(Workshop workshop) => "Promises, tail, leads";

    public override JsonObject Current(Workshop workshop) => JsonNode.Parse(WorkshopFile.Write(workshop.Settings))!.AsObject();

    public override Change? Change(JsonObject typed, Workshop workshop, out ValueList<Reason> reasons)
    {
        var read = WorkshopFile.Read<Settings>(Bytes(typed));
        reasons = read.Reasons;
        return read.IsRead ? new SettingsChange(read.Thing) : null;
    }

    public override string Back(Workshop workshop, Paths paths) => paths.Settings;
}

/// <summary>The workshop's name and zone.</summary>
internal sealed class EditableAbout : Editable
{
    private static readonly string[] Members = ["name", "zone"];

    public override string Definition => "about";

    public override Aggregate What => Aggregate.About;

    public override string Word => "workshop";

    public override DeskPage Page => DeskPage.Settings;

    public override string Title(Workshop workshop) => "Name and time zone";

    public override JsonObject Current(Workshop workshop) => new() { ["name"] = workshop.Name, ["zone"] = workshop.Zone };

    public override Change? Change(JsonObject typed, Workshop workshop, out ValueList<Reason> reasons)
    {
        var missing = Members.Where(member => typed[member] is null)
            .Select(member => new Reason($"$.{member}", $"The {member} is missing."));
        reasons = missing.ToValueList();
        return reasons.Count > 0 ? null : new Batch([new NameChange((string)typed["name"]!), new ZoneChange((string)typed["zone"]!)]);
    }

    public override string Back(Workshop workshop, Paths paths) => paths.Settings;
}
