using EpisodePlanner.Planning;
using NodaTime;

namespace EpisodePlanner.Data.Rows;

/// <summary>A told date.</summary>
internal sealed class ToldDateRow : AggregateRow
{
    public string Episode { get; set; } = "";

    public LocalDate Date { get; set; }

    public LocalDate ToldOn { get; set; }

    public string To { get; set; } = "";

    public decimal? Odds { get; set; }

    public override Aggregate What => ThingKinds.ToldDates.Of(new Id(Id));

    public override string Title => ThingNames.Of((ToldDate)Read());

    protected override string KindName => ThingKinds.ToldDates.Name;

    public override void Hold(object value)
    {
        var told = (ToldDate)value;
        (Episode, Date, ToldOn) = (told.Episode.ToString(), told.Date, told.ToldOn);
        (To, Odds) = (told.To, told.Odds);
    }

    protected override object Value() => new ToldDate
    {
        Id = new Id(Id),
        Episode = new Id(Episode),
        Date = Date,
        ToldOn = ToldOn,
        To = To,
        Odds = Odds,
    };
}
