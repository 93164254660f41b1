using Microsoft.EntityFrameworkCore.Storage.ValueConversion;
using NodaTime;
using NodaTime.Text;

namespace EpisodePlanner.Data.Sqlite.Converting;

/// <summary>Dates as ISO 8601 writes them: "2027-03-05".</summary>
internal sealed class LocalDateConverter() : ValueConverter<LocalDate, string>(
    date => LocalDatePattern.Iso.Format(date), text => LocalDatePattern.Iso.Parse(text).Value);
