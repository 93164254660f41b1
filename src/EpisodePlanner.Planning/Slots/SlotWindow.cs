using NodaTime;

namespace EpisodePlanner.Planning;

/// <summary>One window in which the channel may publish.</summary>
/// <param name="Rule">The slot rule it comes from.</param>
/// <param name="Opening">The minute it opens; negative where it was open when the plan was made.</param>
/// <param name="End">The minute it ends; its opening where it is a moment.</param>
/// <param name="LocalOpening">The opening as the clock shows it.</param>
/// <param name="Series">The series that may use it; all where empty.</param>
public sealed record SlotWindow(
    Id Rule, int Opening, int End, LocalDateTime LocalOpening, ValueList<Id> Series)
{
    /// <summary>Whether a series may use it.</summary>
    public bool Admits(Id series) => Series.Count == 0 || Series.Contains(series);
}
