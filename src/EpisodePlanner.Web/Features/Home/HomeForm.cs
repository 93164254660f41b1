using EpisodePlanner.Planning;
using EpisodePlanner.Web.Forms;

namespace EpisodePlanner.Web.Features.Home;

/// <summary>The form to begin a workshop.</summary>
/// <param name="Name">The name, as it was typed.</param>
/// <param name="Zone">The time zone, as it was typed.</param>
internal sealed record HomeForm(string Name, string Zone)
{
    /// <summary>A form that nobody typed into.</summary>
    public static HomeForm Empty { get; } = new("", "");

    /// <summary>The workshop that it asks for.</summary>
    public Workshop ToWorkshop() => new() { Format = Workshop.CurrentFormat, Name = Name.Trim(), Zone = Zone.Trim() };

    /// <summary>Its fields, filled with what was typed, each with what is wrong with it.</summary>
    public ValueList<FormField> Fields(ValueList<Reason> reasons) =>
    [
        Field("name", "Name", "What you call your workshop.", Name, reasons),
        Field("zone", "Time zone", "Where its clock hangs, as in Europe/Dublin or America/New_York.", Zone, reasons),
    ];

    private static TextField Field(string name, string label, string help, string value, ValueList<Reason> reasons) => new()
    {
        Name = name,
        Label = label,
        Help = help,
        Value = value,
        IsRequired = true,
        Problems = reasons.Where(reason => reason.Where == $"$.{name}").Select(reason => reason.Says).ToValueList(),
    };
}
