using EpisodePlanner.Planning;
using NodaTime.Text;

namespace EpisodePlanner.Writing;

/// <summary>What a fact is about.</summary>
public enum FactKind
{
    /// <summary>The workshop itself: its name and settings.</summary>
    Workshop,

    /// <summary>A series.</summary>
    Series,

    /// <summary>A milestone.</summary>
    Milestone,

    /// <summary>A task.</summary>
    Task,

    /// <summary>A shot of a task.</summary>
    Shot,

    /// <summary>A log entry.</summary>
    Log,

    /// <summary>An upload made.</summary>
    Upload,

    /// <summary>A date told.</summary>
    Told,

    /// <summary>A timed line.</summary>
    TimedLine,

    /// <summary>An episode of the plan.</summary>
    Episode,

    /// <summary>A stage of the plan, or a part of a tail.</summary>
    Planned,

    /// <summary>A silence of the plan beyond its promise.</summary>
    Silence,
}

/// <summary>One thing in the log, the workshop or the plan that a sentence rests on: without it the sentence goes.</summary>
/// <param name="Kind">What it is about.</param>
/// <param name="Name">The thing's id; where it has none of its own, its place.</param>
public readonly record struct Fact(FactKind Kind, string Name)
{
    /// <summary>The workshop itself.</summary>
    public static Fact OfWorkshop => new(FactKind.Workshop, "");

    /// <summary>A series.</summary>
    public static Fact Of(Series series) => new(FactKind.Series, $"{series.Id}");

    /// <summary>A series by its outlook in the plan.</summary>
    public static Fact Of(Outlook outlook) => new(FactKind.Series, $"{outlook.Series}");

    /// <summary>A milestone.</summary>
    public static Fact Of(Milestone milestone) => new(FactKind.Milestone, $"{milestone.Id}");

    /// <summary>A task.</summary>
    public static Fact Of(WorkTask task) => new(FactKind.Task, $"{task.Id}");

    /// <summary>A shot.</summary>
    public static Fact Of(WorkTask task, Shot shot) => new(FactKind.Shot, $"{task.Id}/{shot.Id}");

    /// <summary>A log entry.</summary>
    public static Fact Of(LogEntry entry) => new(FactKind.Log, $"{entry.Id}");

    /// <summary>An upload.</summary>
    public static Fact Of(Upload upload) => new(FactKind.Upload, $"{upload.Id}");

    /// <summary>A told date.</summary>
    public static Fact Of(ToldDate told) => new(FactKind.Told, $"{told.Id}");

    /// <summary>A timed line.</summary>
    public static Fact Of(TimedLine line) => new(FactKind.TimedLine, $"{line.Id}");

    /// <summary>An episode of the plan.</summary>
    public static Fact Of(PlannedEpisode episode) => new(FactKind.Episode, $"{episode.Id}");

    /// <summary>A stage of the plan.</summary>
    public static Fact Of(PlannedStage stage) => new(FactKind.Planned, stage.Key switch
    {
        { IsTail: true } key => $"{key.Episode}/{key.Part}",
        { IsShot: true } key => $"{key.Task}/film/{key.Shot}",
        var key => $"{key.Task}/{key.Stage}",
    });

    /// <summary>A silence of a series or of the channel.</summary>
    public static Fact Of(Outlook outlook, SilenceAhead silence) =>
        new(FactKind.Silence, $"{outlook.Series}/{LocalDatePattern.Iso.Format(silence.Due)}");
}
