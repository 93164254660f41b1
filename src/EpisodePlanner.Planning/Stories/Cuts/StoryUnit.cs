namespace EpisodePlanner.Planning;

/// <summary>A step of a series' story still to be told: a milestone that may be cut freely, or an episode that stays as it is.</summary>
internal sealed record StoryUnit
{
    /// <summary>The milestones: one, or those of the episode that stays.</summary>
    public required ValueList<Milestone> Milestones { get; init; }

    /// <summary>The episode that stays as it is; null for a milestone.</summary>
    public required Episode? Fixed { get; init; }

    /// <summary>Why it stays as it is; null for a milestone.</summary>
    public required string? FixedBy { get; init; }

    /// <summary>The episode that shows the milestone now and may be cut otherwise; null where none does.</summary>
    public required Episode? Shown { get; init; }

    /// <summary>Whether an episode may end with it unforced: it satisfies, and is not held together with the next.</summary>
    public required bool MayEnd { get; init; }

    /// <summary>Likely minutes on screen.</summary>
    public decimal ScreenMinutes => Milestones.Sum(m => m.ScreenMinutes?.Likely ?? Defaults.ScreenMinutes);
}
