using EpisodePlanner.Planning;
using NodaTime;

namespace EpisodePlanner.Data.Rows;

/// <summary>An upload.</summary>
internal sealed class UploadRow : AggregateRow
{
    public string Series { get; set; } = "";

    public LocalDate Date { get; set; }

    public string? Name { get; set; }

    public string? Episode { get; set; }

    public override Aggregate What => ThingKinds.Uploads.Of(new Id(Id));

    public override string Title => ThingNames.Of((Upload)Read());

    protected override string KindName => ThingKinds.Uploads.Name;

    public override void Hold(object value)
    {
        var upload = (Upload)value;
        (Series, Date, Name) = (upload.Series.ToString(), upload.Date, upload.Title);
        Episode = upload.Episode?.ToString();
    }

    protected override object Value() => new Upload
    {
        Id = new Id(Id),
        Series = new Id(Series),
        Date = Date,
        Title = Name,
        Episode = Named.Id(Episode),
    };
}
