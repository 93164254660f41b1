using Microsoft.EntityFrameworkCore.Storage.ValueConversion;
using NodaTime;

namespace EpisodePlanner.Data.Sqlite.Converting;

/// <summary>Moments as ticks of 100 nanoseconds since 1970.</summary>
internal sealed class InstantConverter() : ValueConverter<Instant, long>(
    moment => moment.ToUnixTimeTicks(), ticks => Instant.FromUnixTimeTicks(ticks));
