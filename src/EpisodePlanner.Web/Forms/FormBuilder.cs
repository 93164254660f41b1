using System.Text.Json.Nodes;
using EpisodePlanner.Planning;
using NodaTime;
using NodaTime.Text;

namespace EpisodePlanner.Web.Forms;

/// <summary>
/// Makes the form of a record from its schema: what stands in it, what can be chosen, and what is wrong at each field.
/// </summary>
public sealed class FormBuilder
{
    private static readonly LocalDateTimePattern LocalPattern =
        LocalDateTimePattern.CreateWithInvariantCulture("uuuu'-'MM'-'dd'T'HH':'mm");

    private readonly FormReferences references;
    private readonly DateTimeZone zone;
    private readonly ILookup<string, string> problems;

    /// <summary>A builder for things of a workshop.</summary>
    /// <param name="workshop">What can be referred to, and the zone of moments.</param>
    /// <param name="problems">What is wrong, by the paths of <see cref="Reason.Where"/> into the thing.</param>
    public FormBuilder(Workshop workshop, IEnumerable<Reason> problems)
    {
        references = new FormReferences(workshop);
        zone = DateTimeZoneProviders.Tzdb.GetZoneOrNull(workshop.Zone) ?? DateTimeZone.Utc;
        this.problems = problems.ToLookup(reason => Name(reason.Where), reason => reason.Says);
    }

    /// <summary>The form of a record.</summary>
    /// <param name="definition">Its name in the schema: "workTask".</param>
    /// <param name="value">What stands in it: the thing as its file would hold it, or as it was typed.</param>
    public GroupField Build(string definition, JsonObject value) =>
        Group("", FormWords.Label(definition), null, isRequired: true, definition, value);

    /// <summary>What is wrong with the thing and belongs to no field of its form.</summary>
    public IEnumerable<string> Elsewhere(GroupField form)
    {
        var names = form.WithAllInside().Select(field => field.Name).ToHashSet();
        return problems.Where(problem => problem.Key.Length == 0 || !names.Contains(problem.Key)).SelectMany(problem => problem);
    }

    /// <summary>The name of the field that a reason is about: "$.stages[0].hours" is "stages[0].hours".</summary>
    private static string Name(string where) => where.TrimStart('$').TrimStart('.');

    private GroupField Group(string name, string label, string? help, bool isRequired, string definition, JsonObject? value) => new()
    {
        Name = name,
        Label = label,
        Help = help,
        IsRequired = isRequired,
        Problems = problems[name].ToValueList(),
        Fields = FormSchema.Members(definition).Select(member => Field(name, member, value?[member.Name])).ToValueList(),
    };

    private FormField Field(string parent, FormMember member, JsonNode? value)
    {
        var name = parent.Length == 0 ? member.Name : $"{parent}.{member.Name}";
        var label = FormWords.Label(member.Name);
        FormField field = member.Entry switch
        {
            FormEntry.Hidden => new HiddenField { Name = name, Label = label, Value = FormValues.Text(value) },
            FormEntry.Group => Group(name, label, member.Help, member.IsRequired, member.Record!, value as JsonObject),
            FormEntry.List => List(name, label, member, value as JsonArray),
            FormEntry.Tick => new TickField { Name = name, Label = label, IsTicked = Ticked(member, value) },
            FormEntry.One => Choice(name, label, member, [FormValues.Text(value)]),
            FormEntry.Several => Choice(name, label, member, FormValues.Texts(value)) with { IsMany = true },
            FormEntry.Lines => Text(name, label, string.Join('\n', FormValues.Texts(value))) with { ManyLines = true },
            FormEntry.Needs => Text(name, label, Needs(value)) with { ManyLines = true },
            FormEntry.Number => Number(name, label, member, value),
            _ => Text(name, label, member, value),
        };
        return field with
        {
            Help = member.Help,
            IsRequired = member.IsRequired,
            IsRare = member.IsRare,
            Problems = member.IsRequired && value is null && problems.Contains(name)
                ? ["This is needed."]
                : problems[name].Concat(problems.Where(p => IsInside(field, p.Key)).SelectMany(p => p)).Distinct().ToValueList(),
        };
    }

    /// <summary>Whether a problem is about a part of a field that is typed as one.</summary>
    private static bool IsInside(FormField field, string problem) =>
        field is TextField or ChoiceField && problem.StartsWith(field.Name + "[", StringComparison.Ordinal);

    private ListField List(string name, string label, FormMember member, JsonArray? value) => new()
    {
        Name = name,
        Label = label,
        ItemWord = FormWords.Item(member.Name),
        Items = (value ?? [])
            .Select((item, i) => Group(
                $"{name}[{i}]", $"{FormWords.Label(FormWords.Item(member.Name))} {i + 1}", null, false, member.ItemRecord!, item as JsonObject))
            .ToValueList(),
    };

    /// <summary>A milestone's payoff is the one member that is true where it is absent.</summary>
    private static bool Ticked(FormMember member, JsonNode? value) =>
        value is null ? member is { Owner: "milestone", Name: "payoff" } : FormValues.Text(value) == "true";

    private ChoiceField Choice(string name, string label, FormMember member, IEnumerable<string> chosen)
    {
        var some = chosen.Where(text => text.Length > 0).ToValueList();
        var options = Options(member).ToList();
        options.AddRange(some.Except(options.Select(option => option.Value)).Select(text => new FormOption(text, $"{text} (unknown)")));
        return new ChoiceField { Name = name, Label = label, Options = options.ToValueList(), Chosen = some };
    }

    private IEnumerable<FormOption> Options(FormMember member) => member.RefersTo is { } refersTo
        ? references.Options(refersTo)
        : ((member.Items ?? member.Schema)["oneOf"]!.AsArray()).Select(option =>
            new FormOption((string)option!["const"]!, FormWords.Value((string)option["const"]!)));

    private string Needs(JsonNode? value) => string.Join(
        '\n', (value as JsonArray ?? []).Select(choice => references.LineOf(FormValues.Texts(choice))));

    private static TextField Text(string name, string label, string value) => new() { Name = name, Label = label, Value = value };

    private static TextField Number(string name, string label, FormMember member, JsonNode? value) => new()
    {
        Name = name,
        Label = label,
        Value = FormValues.Text(value),
        Type = "number",
        Least = member.Schema["minimum"]?.ToJsonString(),
        Most = member.Schema["maximum"]?.ToJsonString(),
        IsWhole = (string?)member.Schema["type"] == "integer",
    };

    private TextField Text(string name, string label, FormMember member, JsonNode? value)
    {
        var type = FormValues.InputType(member);
        var text = FormValues.Text(value);
        return new TextField
        {
            Name = name,
            Label = label,
            Value = FormValues.IsMoment(member) ? Local(text) : text,
            Type = type,
            Longest = (int?)member.Schema["maxLength"],
            ManyLines = type == "text" && ((int?)member.Schema["maxLength"] ?? 0) > 200,
        };
    }

    /// <summary>A moment on the workshop's clock; a text that is none stays as it is.</summary>
    private string Local(string text) => InstantPattern.ExtendedIso.Parse(text) is { Success: true } parsed
        ? LocalPattern.Format(parsed.Value.InZone(zone).LocalDateTime)
        : text;
}
