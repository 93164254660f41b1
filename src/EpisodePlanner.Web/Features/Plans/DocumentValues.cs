using System.Text.Json;
using EpisodePlanner.Planning;
using NodaTime;
using NodaTime.Text;

namespace EpisodePlanner.Web.Features.Plans;

/// <summary>Values as they stand in a document.</summary>
internal sealed class DocumentValues(DateTimeZone zone)
{
    private static readonly OffsetDateTimePattern MomentPattern =
        OffsetDateTimePattern.CreateWithInvariantCulture("uuuu'-'MM'-'dd'T'HH':'mm':'sso<+HH:mm>");

    private static readonly LocalDateTimePattern LocalPattern =
        LocalDateTimePattern.CreateWithInvariantCulture("uuuu'-'MM'-'dd'T'HH':'mm");

    /// <summary>Chains that share their beginning tell the same moments again and again; each is put in words once.</summary>
    private readonly Dictionary<Instant, string> moments = [];

    public string Moment(Instant moment)
    {
        if (!moments.TryGetValue(moment, out var text))
        {
            text = MomentPattern.Format(moment.InZone(zone).ToOffsetDateTime());
            moments.Add(moment, text);
        }

        return text;
    }

    public string? Moment(Instant? moment) => moment is { } given ? Moment(given) : null;

    public static string Local(LocalDateTime moment) => LocalPattern.Format(moment);

    public static string Day(LocalDate day) => LocalDatePattern.Iso.Format(day);

    public static string? Day(LocalDate? day) => day is { } given ? Day(given) : null;

    public static string? Name(Id? id) => id is { IsEmpty: false } given ? $"{given}" : null;

    public static string Word<T>(T value)
        where T : struct, Enum => JsonNamingPolicy.CamelCase.ConvertName($"{value}");

    public static KeyEntry Key(StageKey key) => key.IsTail
        ? new KeyEntry(null, null, $"{key.Episode}", key.Part, null)
        : new KeyEntry($"{key.Task}", Name(key.Stage), null, null, Name(key.Shot));

    public static CauseEntry Cause(PlannedCause cause) => new(
        Word(cause.Kind), cause.Says, cause.Stage is { } stage ? Key(stage) : null, Name(cause.Station), cause.CoBlockers);
}
