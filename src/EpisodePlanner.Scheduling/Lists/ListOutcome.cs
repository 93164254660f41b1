namespace EpisodePlanner.Scheduling.Lists;

/// <summary>What came of decoding a list.</summary>
internal enum ListOutcome
{
    /// <summary>A schedule not met before.</summary>
    Fresh,

    /// <summary>A schedule met before.</summary>
    Met,

    /// <summary>None: it would be no better than the worst member, or the budget is used up.</summary>
    Useless,
}
