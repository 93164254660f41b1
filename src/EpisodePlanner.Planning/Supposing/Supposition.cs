namespace EpisodePlanner.Planning;

/// <summary>Something that might happen, or might be done, as a change that can be planned beside the real plan.</summary>
/// <param name="Says">In words, to follow "if": "you are ill from Monday 7 to Sunday 13 December".</param>
/// <param name="Change">The change to the workshop.</param>
public sealed record Supposition(string Says, Change Change);
