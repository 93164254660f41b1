namespace EpisodePlanner.Scheduling.Networks;

/// <summary>A piece of work in an <see cref="ActivityNetwork"/>, known inside it by its place in the list.</summary>
/// <param name="Name">What people call it. Only shown, never compared, so two activities may share a name.</param>
/// <param name="Duration">How long it takes, in the caller's unit; zero or more.</param>
public readonly record struct NetworkActivity(string Name, long Duration);
