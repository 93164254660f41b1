using System.Text;
using EpisodePlanner.Planning;

namespace EpisodePlanner.Data.Rows;

/// <summary>A thing, or a single of a workshop, with its JSON as body.</summary>
internal sealed class ThingRow : AggregateRow
{
    /// <summary>The name of the aggregate's kind.</summary>
    public required string Kind { get; set; }

    public string Name { get; set; } = "";

    /// <summary>The series it names itself.</summary>
    public string? Series { get; set; }

    /// <summary>The thing as JSON on one line, by the contract of the workshop file.</summary>
    public string Body { get; set; } = "";

    public override Aggregate What => new(Kind, new Id(Id));

    public override string Title => Name;

    protected override string KindName => Kind;

    public override void Hold(object value)
    {
        Name = value is IThing thing ? ThingNames.Of(thing) : Kind;
        Series = SeriesOf(value)?.ToString();
        Body = Encoding.UTF8.GetString(Bodies.Write(Kind, value));
    }

    protected override object Value() => Bodies.Read(What, Workshop, Body);

    private static Id? SeriesOf(object value) => value switch
    {
        WorkTask task => task.Series,
        Episode episode => episode.Series,
        _ => null,
    };
}
