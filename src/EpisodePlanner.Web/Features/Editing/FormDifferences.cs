using EpisodePlanner.Planning;
using EpisodePlanner.Web.Forms;

namespace EpisodePlanner.Web.Features.Editing;

/// <summary>Compares two versions of a form, field by field.</summary>
internal static class FormDifferences
{
    /// <summary>The fields in which two forms of one record differ, in their order.</summary>
    public static ValueList<FieldDifference> Between(GroupField theirs, GroupField yours)
    {
        var left = Values(theirs, "").ToDictionary(field => field.Name);
        var right = Values(yours, "").ToDictionary(field => field.Name);
        return left.Keys.Union(right.Keys)
            .Select(name => (Left: left.GetValueOrDefault(name), Right: right.GetValueOrDefault(name)))
            .Where(pair => (pair.Left?.Value ?? "") != (pair.Right?.Value ?? ""))
            .Select(pair => new FieldDifference((pair.Left ?? pair.Right)!.Label, pair.Left?.Value ?? "", pair.Right?.Value ?? ""))
            .ToValueList();
    }

    private static IEnumerable<Line> Values(FormField field, string within) => field switch
    {
        GroupField group => group.Fields.SelectMany(inner => Values(inner, Inside(within, group))),
        ListField list => list.Items.SelectMany(item => Values(item, within)),
        TextField text => [new Line(text.Name, Inside(within, text), text.Value)],
        TickField tick => [new Line(tick.Name, Inside(within, tick), tick.IsTicked ? "yes" : "no")],
        ChoiceField choice => [new Line(choice.Name, Inside(within, choice), Chosen(choice))],
        _ => [],
    };

    private static string Inside(string within, FormField field) =>
        field.Name.Length == 0 ? "" : within.Length == 0 ? field.Label : $"{within}, {field.Label}";

    private static string Chosen(ChoiceField choice) => string.Join(
        ", ", choice.Options.Where(option => choice.Chosen.Contains(option.Value)).Select(option => option.Label));

    private sealed record Line(string Name, string Label, string Value);
}
