namespace EpisodePlanner.Scheduling;

/// <summary>Which end of one activity holds which end of the next; each says "at least".</summary>
public enum LinkKind
{
    /// <summary>Starts after the other's finish (finish-to-start).</summary>
    After,

    /// <summary>Starts after the other's start (start-to-start).</summary>
    TogetherStart,

    /// <summary>Finishes after the other's finish (finish-to-finish).</summary>
    TogetherFinish,

    /// <summary>Finishes after the other's start (start-to-finish).</summary>
    StartToFinish,
}
