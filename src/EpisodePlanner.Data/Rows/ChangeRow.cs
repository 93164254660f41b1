using NodaTime;

namespace EpisodePlanner.Data.Rows;

/// <summary>A change that was made: the step from the version before to its own. Kept for ever.</summary>
internal sealed class ChangeRow
{
    public required string Workshop { get; set; }

    public long Version { get; set; }

    public Instant At { get; set; }

    public required string Who { get; set; }

    public Act Act { get; set; }

    /// <summary>The version of the change that was undone or redone, or of the deletion that was taken back.</summary>
    public long? Of { get; set; }

    public required string Says { get; set; }

    /// <summary>The change as JSON.</summary>
    public required string After { get; set; }

    /// <summary>The change that leads back, as JSON.</summary>
    public required string Before { get; set; }

    /// <summary>The version of the undo by which the change is out of force; null while it is in force.</summary>
    public long? UndoneBy { get; set; }
}
