namespace EpisodePlanner.Scheduling.Networks;

/// <summary>One step of a critical path.</summary>
/// <param name="Activity">Index of the activity.</param>
/// <param name="DrivingLink">
/// Index of the link from the step before that fixes this one's early start; null for the first step.
/// </param>
public readonly record struct CriticalStep(int Activity, int? DrivingLink);
