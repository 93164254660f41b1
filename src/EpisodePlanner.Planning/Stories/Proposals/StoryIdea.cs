namespace EpisodePlanner.Planning;

/// <summary>A change to the story that could be planned.</summary>
/// <param name="Move">What sort of change.</param>
/// <param name="Says">In words.</param>
/// <param name="About">The milestone or the log entry it is about; null for none.</param>
/// <param name="Change">The change.</param>
internal sealed record StoryIdea(StoryMove Move, string Says, Id? About, Change Change);
