namespace EpisodePlanner.Web.Pages;

/// <summary>How long a page waits for what can be shown a moment later.</summary>
/// <param name="WithTrials">For the further plans that weigh what starts tonight and what was assumed.</param>
internal sealed record Patience(TimeSpan WithTrials);
