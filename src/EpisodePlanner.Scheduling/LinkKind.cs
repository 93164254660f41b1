namespace EpisodePlanner.Scheduling;

/// <summary>
/// Which ends a link between two pieces of work ties together. Every link says "at least": the named end of the
/// later one lies no sooner than the named end of the earlier one plus the link's lag.
/// </summary>
public enum LinkKind
{
    /// <summary>Finish-to-start: the later one starts once the earlier one has finished.</summary>
    After,

    /// <summary>Start-to-start: the later one starts once the earlier one has started.</summary>
    TogetherStart,

    /// <summary>Finish-to-finish: the later one finishes once the earlier one has finished.</summary>
    TogetherFinish,

    /// <summary>Start-to-finish: the later one finishes once the earlier one has started.</summary>
    StartToFinish,
}
