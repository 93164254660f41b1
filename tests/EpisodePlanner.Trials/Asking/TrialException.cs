namespace EpisodePlanner.Trials.Asking;

/// <summary>Says what the server did that it must never do.</summary>
public sealed class TrialException(string message) : Exception(message);
