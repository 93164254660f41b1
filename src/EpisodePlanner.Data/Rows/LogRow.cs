using EpisodePlanner.Planning;
using NodaTime;

namespace EpisodePlanner.Data.Rows;

/// <summary>A log entry.</summary>
internal sealed class LogRow : AggregateRow
{
    private const long NanosecondsPerMicrosecond = 1_000;

    /// <summary>The moment in whole microseconds, which is as exact as both databases are.</summary>
    public Instant At { get; set; }

    /// <summary>What the moment has beyond them, 0 to 999.</summary>
    public int AtNanoseconds { get; set; }

    public string? Task { get; set; }

    public string? Stage { get; set; }

    public string? Episode { get; set; }

    public TailKind? Part { get; set; }

    public int Minutes { get; set; }

    public LogOutcome Outcome { get; set; }

    public int? RemainingMinutes { get; set; }

    public string? Station { get; set; }

    public string? Note { get; set; }

    public override Aggregate What => ThingKinds.Log.Of(new Id(Id));

    public override string Title => ThingNames.Of((LogEntry)Read());

    protected override string KindName => ThingKinds.Log.Name;

    public override void Hold(object value)
    {
        var entry = (LogEntry)value;
        AtNanoseconds = (int)(entry.At.InUtc().NanosecondOfDay % NanosecondsPerMicrosecond);
        At = entry.At - Duration.FromNanoseconds(AtNanoseconds);
        (Task, Stage) = (entry.Task?.ToString(), entry.Stage?.ToString());
        (Episode, Part) = (entry.Episode?.ToString(), entry.Part);
        (Minutes, Outcome, RemainingMinutes) = (entry.Minutes, entry.Outcome, entry.RemainingMinutes);
        (Station, Note) = (entry.Station?.ToString(), entry.Note);
    }

    protected override object Value() => new LogEntry
    {
        Id = new Id(Id),
        At = At + Duration.FromNanoseconds(AtNanoseconds),
        Task = Named.Id(Task),
        Stage = Named.Id(Stage),
        Episode = Named.Id(Episode),
        Part = Part,
        Minutes = Minutes,
        Outcome = Outcome,
        RemainingMinutes = RemainingMinutes,
        Station = Named.Id(Station),
        Note = Note,
    };
}
